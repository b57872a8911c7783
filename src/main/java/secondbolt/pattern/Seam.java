package secondbolt.pattern;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import secondbolt.file.value.Placed;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;

/**
 * A join: two sums of edges that are sewn together.
 *
 * @param first the first, which may be meant to be longer
 * @param second the second
 * @param ease by how much the first is meant to be longer
 * @param gather how many times the second the first is meant to be; 1 if it is not gathered
 * @param laps how much of the second runs past the first at its ends and is not sewn to it, as the
 *     lap of a waistband; zero if it ends with it
 */
public record Seam(
        Placed<EdgeSum> first,
        Placed<EdgeSum> second,
        Length ease,
        BigDecimal gather,
        Length laps) {
    /** Both sides. */
    public List<Placed<EdgeSum>> sides() {
        return List.of(first, second);
    }

    /** All edges of both. */
    public Set<PieceEdge> edges() {
        Set<PieceEdge> edges = new LinkedHashSet<>();
        sides().forEach(side -> edges.addAll(side.value().pieceEdges()));
        return edges;
    }

    /** Whether the first is gathered into the second. */
    public boolean isGathered() {
        return gather.compareTo(BigDecimal.ONE) != 0;
    }

    /** Whether the second runs past the first. */
    public boolean isLapped() {
        return laps.isPositive();
    }

    /** As a page names it. */
    public String words() {
        return first.value().words() + " to " + second.value().words();
    }

    /** Both sides as they are written, for other programs. */
    public String written() {
        return first.value() + " to " + second.value();
    }
}
