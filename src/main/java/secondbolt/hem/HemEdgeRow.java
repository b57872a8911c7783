package secondbolt.hem;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.block.Both;
import secondbolt.block.Table;
import secondbolt.block.Table.Cell;
import secondbolt.hem.guide.HemWords;
import secondbolt.hem.turned.HemEdge;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * The row of an edge in the tables of its page and its sheets.
 *
 * @param edge which
 * @param shape what its fold looks like
 * @param times how often it goes round
 * @param measured its fold, the edge that is sewn down, the line it lands on, how much longer the
 *     first is than the second, each once, and what is done with it
 */
record HemEdgeRow(String edge, String shape, int times, List<Cell> measured) {
    private static final String UNKNOWN = "not known";
    private static final List<String> MEASURED =
            List.of("Fold", "Turned edge", "Lands on", "Longer by", "What to do");

    HemEdgeRow {
        measured = List.copyOf(measured);
    }

    static HemEdgeRow of(HemEdge edge, Tape tape) {
        return new HemEdgeRow(
                edge.edge().heading(),
                HemWords.shape(edge, tape),
                edge.times(),
                List.of(
                        Cell.of(tape, edge.fold()),
                        Cell.of(Both.of(tape, edge.cutEdge(), UNKNOWN)),
                        Cell.of(Both.of(tape, edge.landsOn(), UNKNOWN)),
                        Cell.of(longer(edge, tape)),
                        Cell.of(edge.handling().words())));
    }

    private static Both longer(HemEdge edge, Tape tape) {
        Optional<Length> surplus = edge.surplus();
        if (surplus.isEmpty()) {
            return Both.words(UNKNOWN);
        }
        String sign = surplus.get().isNegative() ? "−" : "";
        String share = edge.fullness().map(f -> ", " + HemWords.percent(Math.abs(f))).orElse("");
        Both size = Both.of(tape, t -> sign + HemWords.print(t, surplus.get().size()));
        return new Both(size.own() + share, size.other());
    }

    /** The table of a hem's page. */
    static Table onPage(String hem, List<HemEdgeRow> edges) {
        return new Table(
                "Edges of " + hem,
                "Each edge once, as drawn: the edge that is turned up beside the line it lands on, "
                        + hem,
                with(List.of("Edge", "Shape of the fold", "How many round"), MEASURED),
                edges.stream()
                        .map(
                                row ->
                                        with(
                                                List.of(
                                                        Cell.of(row.edge()),
                                                        Cell.of(row.shape()),
                                                        Cell.of(Integer.toString(row.times()))),
                                                row.measured()))
                        .toList());
    }

    /** The table of its sheets, where there is less room. */
    static Table onSheet(List<HemEdgeRow> edges) {
        return new Table(
                "",
                "",
                with(List.of("Edge"), MEASURED),
                edges.stream()
                        .map(row -> with(List.of(Cell.of(row.counted())), row.measured()))
                        .toList());
    }

    private String counted() {
        return edge + ", " + (times == 1 ? "once" : times + " times");
    }

    private static <T> List<T> with(List<T> first, List<T> more) {
        List<T> all = new ArrayList<>(first);
        all.addAll(more);
        return all;
    }
}
