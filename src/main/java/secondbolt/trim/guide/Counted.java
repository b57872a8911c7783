package secondbolt.trim.guide;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.garment.PieceEdge;
import secondbolt.trim.plan.CountedEdge;

/** How often an edge is counted, in words and as written. */
public final class Counted {
    private Counted() {}

    /** {@code once}, {@code twice}, {@code 3 times}. */
    public static String times(int count) {
        return switch (count) {
            case 1 -> "once";
            case 2 -> "twice";
            default -> count + " times";
        };
    }

    /** An edge as it is written in a sum: {@code 2 front.neckline}. */
    public static String term(int count, PieceEdge edge) {
        return count == 1 ? edge.toString() : count + " " + edge;
    }

    /**
     * What is said of edges that are counted less often than the garment has them; nothing if none
     * is.
     */
    public static Optional<String> less(List<? extends CountedEdge> edges) {
        List<String> less =
                edges.stream()
                        .filter(edge -> edge.count() < edge.rounds())
                        .map(
                                edge ->
                                        edge.edge().words()
                                                + " is counted "
                                                + times(edge.count())
                                                + ", and the garment has it "
                                                + times(edge.rounds()))
                        .toList();
        return less.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "A piece drawn half or cut as a pair has each edge twice: "
                                + String.join("; ", less)
                                + ".");
    }

    /** The edges as they are written if each is counted as often as the garment has it. */
    public static String line(List<? extends CountedEdge> edges) {
        return edges.stream()
                .map(edge -> term(Math.max(edge.count(), edge.rounds()), edge.edge()))
                .collect(Collectors.joining(", "));
    }
}
