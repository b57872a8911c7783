package secondbolt.closure;

import java.util.List;
import java.util.stream.Collectors;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Convention;

/**
 * How far apart fasteners usually are on a garment.
 *
 * @param on what garments
 * @param from at the least
 * @param to at the most
 */
record UsualGap(String on, Convention from, Convention to) {
    private static final List<UsualGap> ALL =
            List.of(
                    new UsualGap("shirts and blouses", usual(6, 80), usual(7, 90)),
                    new UsualGap("children's", usual(5, 60), usual(6, 80)),
                    new UsualGap("coats", usual(8, 100), usual(10, 120)));

    private static Convention usual(int halfInches, int mm) {
        return Convention.common(Length.ofInches(halfInches, 2), Length.ofMillimetres(mm));
    }

    /** All of them in a sentence. */
    static String sentence(Tape tape) {
        return ALL.stream()
                .map(usual -> usual.words(tape))
                .collect(
                        Collectors.joining(
                                ", ",
                                "Usual are ",
                                " ("
                                        + Convention.COMMON_PRACTICE
                                        + "); larger fasteners stand wider apart."));
    }

    private String words(Tape tape) {
        String least = tape.print(from.on(tape)).replace(" " + tape.symbol(), "");
        return least + " to " + tape.print(to.on(tape)) + " on " + on;
    }
}
