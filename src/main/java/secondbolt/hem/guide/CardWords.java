package secondbolt.hem.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Point;

/**
 * What stands on a pressing card.
 *
 * @param headings from the top
 * @param rows below them, each tied to a line
 */
public record CardWords(List<String> headings, List<Row> rows) {
    private static final int HEADINGS = 3;

    /** Copies both. */
    public CardWords {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /**
     * A row of words.
     *
     * @param text what it says
     * @param line the line it is tied to
     */
    public record Row(String text, List<Point> line) {}

    /** What stands on a card of a hem. */
    public static CardWords of(PressingCard card, HemResult hem, Tape tape) {
        return new CardWords(headings(card, hem.name(), tape), rows(card, hem, tape));
    }

    /** How many rows of words stand on each card of a hem, headings and all. */
    public static int lines(HemResult hem) {
        return HEADINGS + hem.pressing().size() + 1;
    }

    private static List<String> headings(PressingCard card, String hem, Tape tape) {
        String edges =
                card.edges().stream()
                        .map(e -> e.edge().heading())
                        .distinct()
                        .collect(Collectors.joining(", "));
        return List.of(
                hem + ": " + edges,
                "on the wrong side of the cloth, fold down",
                switch (card.kind()) {
                    case STRAIGHT -> "slide it along";
                    case ARC ->
                            "slide it along: the curve is the same all round, radius "
                                    + tape.printBoth(card.radius().orElseThrow());
                    case CURVE ->
                            "left end " + card.ends().get(0) + ", right end " + card.ends().get(1);
                });
    }

    /** The deepest line first, the fold last. */
    private static List<Row> rows(PressingCard card, HemResult hem, Tape tape) {
        List<Row> rows = new ArrayList<>();
        for (int i = hem.pressing().size() - 1; i >= 0; i--) {
            Length depth = hem.pressing().get(i);
            String text = print(tape, depth) + ": " + onLine(hem.hem().turned(), i);
            rows.add(new Row(text, card.inside(depth)));
        }
        rows.add(new Row("fold: this heavy edge", card.inside(Length.ZERO)));
        return rows;
    }

    private static String onLine(Hem.Turned turned, int number) {
        return switch (turned) {
            case ONCE, BLIND -> "raw edge on this line";
            case TWICE ->
                    number == 0 ? "1st, raw edge on this line" : "2nd, folded edge on this line";
            case NARROW -> "1st and 2nd, edge on this line";
            case FACED -> "inner edge of the facing on this line";
        };
    }

    private static String print(Tape tape, Length length) {
        return HemWords.isSmall(length) ? tape.printSmallBoth(length) : tape.printBoth(length);
    }
}
