package secondbolt.textile.extent;

import java.util.List;
import secondbolt.file.Fields;
import secondbolt.measure.Tape;

/**
 * Whether the bare figures of a size in a file in centimetres are those of a sheet, a blanket or a
 * curtain in inches: 66 by 96, 52 by 84.
 *
 * <p>Common practice, no source: such things are 36 to 110 in across and 80 to 120 in long.
 * Household linen in metric sizes is made in fives of centimetres (hand towels of 50 by 100, cot
 * sheets of 60 by 120, squares of 80 and 90), so two such figures are not asked about; nor are
 * figures with a part, which somebody measured, nor a tea towel of 50 by 70, which is shorter.
 */
public final class InchLike {
    private InchLike() {}

    /** Whether it is so of the size among the fields of a cloth. */
    public static boolean of(Fields fields) {
        List<String> bare = fields.letters(ExtentKeys.SIZE);
        if (fields.tape() != Tape.CENTIMETRE
                || !fields.isTapeTold()
                || bare.size() != 2
                || !bare.stream().allMatch(figure -> figure.matches("\\d{2,3}"))) {
            return false;
        }
        return isIn(bare.get(0), 36, 110)
                && isIn(bare.get(1), 80, 120)
                && !bare.stream().allMatch(InchLike::isInFives);
    }

    private static boolean isIn(String figure, int least, int most) {
        return Integer.parseInt(figure) >= least && Integer.parseInt(figure) <= most;
    }

    private static boolean isInFives(String figure) {
        return Integer.parseInt(figure) % 5 == 0;
    }
}
