package secondbolt.closure;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Convention;

/** How far apart fasteners usually are on a garment. */
enum UsualGap {
    /** Shirts and blouses. */
    SHIRT("shirts and blouses", usual(6, 80), usual(7, 90)),
    /** Children's clothes. */
    CHILD("children's", usual(5, 60), usual(6, 80)),
    /** Coats. */
    COAT("coats", usual(8, 100), usual(10, 120));

    private final String on;
    private final Convention from;
    private final Convention to;

    UsualGap(String on, Convention from, Convention to) {
        this.on = on;
        this.from = from;
        this.to = to;
    }

    private static Convention usual(int halfInches, int mm) {
        return Convention.common(Length.ofInches(halfInches, 2), Length.ofMillimetres(mm));
    }

    /** All of them in a sentence. */
    static String sentence(Tape tape) {
        return Stream.of(values())
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
