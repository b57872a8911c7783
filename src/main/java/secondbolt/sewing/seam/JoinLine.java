package secondbolt.sewing.seam;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.pattern.Seam;
import secondbolt.sewing.plan.SeamChoice;

/**
 * A join as it is sewn.
 *
 * @param seam as written
 * @param line how long it is, and how often it is sewn
 * @param choice how it is sewn, as far as it is told
 * @param allowances how wide the allowance of each edge is; of an edge without one nothing
 * @param curve whether its edges run straight
 * @param lacking edges of which it names more than are cut
 */
public record JoinLine(
        Seam seam,
        SewnLine line,
        SeamChoice choice,
        Map<PieceEdge, Length> allowances,
        Curve curve,
        List<PieceEdge> lacking) {
    /** Copies the map in order. */
    public JoinLine {
        allowances = Collections.unmodifiableMap(new LinkedHashMap<>(allowances));
        lacking = List.copyOf(lacking);
    }

    /** How an edge runs. */
    public enum Curve {
        /** Straight, or so nearly that it can be folded. */
        STRAIGHT,
        /** On a curve or round a corner. */
        CURVED,
        /** Known by tape only. */
        UNKNOWN
    }

    /** As a page names it. */
    public String words() {
        return line.what();
    }

    /** The narrowest allowance of it. */
    public Optional<Length> narrowest() {
        return allowances.values().stream().min(Length::compareTo);
    }

    /** Whether its allowances are of several widths. */
    public boolean isUneven() {
        return allowances.values().stream().distinct().count() > 1;
    }

    /** The width that most of its edges have; of two as common the wider. */
    public Optional<Length> commonest() {
        Map<Length, Long> counts =
                allowances.values().stream()
                        .collect(
                                Collectors.groupingBy(
                                        width -> width, LinkedHashMap::new, Collectors.counting()));
        return counts.entrySet().stream()
                .max(
                        Map.Entry.<Length, Long>comparingByValue()
                                .thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey);
    }
}
