package secondbolt.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.cloth.yields.ClothCalculation;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.cloth.yields.ClothYield;
import secondbolt.file.value.AcrossAlong;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Finding;

/**
 * What the maker should know of what the wash does to one cloth.
 *
 * @param result the cloth
 * @param tape to print with
 */
record WashFindings(ClothResult result, Tape tape) {
    private static final Convention EXAMPLE =
            new Convention(
                    Length.ofInches(10, 1),
                    Length.ofMillimetres(100),
                    "a round length to reckon from, our own choice");

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        if (result.cloth().prewash().isEmpty()) {
            findings.add(
                    new Finding(
                            "cloth-prewash-untold",
                            result.subject(),
                            Finding.Level.CAUTION,
                            "It is not told whether it was washed before it was measured; it is"
                                    + " taken as measured.",
                            "Write `prewash: done` if it was; if not, mark a square, wash it as the"
                                    + " garment will be washed, and measure again."));
        }
        AcrossAlong<Optional<Share>> left = result.left();
        if (left.across().isPresent() != left.along().isPresent()) {
            findings.add(oneWayKnown(left));
        }
        return findings;
    }

    /** What it would be if both ways drew in alike: said, and never taken for the result. */
    private Finding oneWayKnown(AcrossAlong<Optional<Share>> left) {
        boolean across = left.across().isPresent();
        Share known = left.across().or(left::along).orElseThrow();
        String text =
                (across ? "Across" : "Along")
                        + " it "
                        + change(known)
                        + "; "
                        + (across ? "along" : "across")
                        + " is not known and need not be the same. If it were, you would cut "
                        + cutFor(known)
                        + " for each "
                        + tape.printBoth(EXAMPLE.on(tape))
                        + result.measured().map(y -> wouldEnd(y, across, known)).orElse("")
                        + ". No figure here takes that for granted.";
        return new Finding("cloth-one-way-known", result.subject(), Finding.Level.NOTE, text, "");
    }

    /** What a cloth does of which this share is left. */
    static String change(Share left) {
        return left.compareTo(Share.WHOLE) > 0
                ? "grows by " + left.plus(Share.ofPercent(-100)).percent(2)
                : "draws in by " + left.lost().percent(2);
    }

    private String wouldEnd(ClothYield measured, boolean across, Share known) {
        AcrossAlong<Length> size = measured.size();
        Length end = (across ? size.along() : size.across()).times(known);
        return ", and the trimmed cloth would end "
                + tape.printBoth(end)
                + (across ? " long" : " wide");
    }

    /** Rounded up on each tape: a length cut too short is lost. */
    private String cutFor(Share left) {
        Length cut = ClothCalculation.cutFor(EXAMPLE.on(tape), left);
        Tape other = tape.other();
        return tape.print(cut.roundedUpTo(tape.mark()))
                + " ("
                + other.print(cut.roundedUpTo(other.mark()))
                + ")";
    }
}
