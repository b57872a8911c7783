package secondbolt.pattern;

import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Serves;
import secondbolt.pattern.piece.Piece;

/**
 * What the edges and lines of a pattern serve, worked out once for all that asks. Of an edge or
 * line that is not in it, it is not known.
 *
 * @param told what the maker says, by the name of an edge or a line
 * @param turned the edges that a hem turns, whatever else they serve
 * @param edges each edge of which it is known
 * @param lines each lengthen and shorten line of which it is known, by its name
 */
public record Meanings(
        Map<String, Serves> told,
        Set<PieceEdge> turned,
        Map<PieceEdge, Meaning> edges,
        Map<String, Meaning> lines) {
    /** Of nothing is it known. */
    public static final Meanings NONE = new Meanings(Map.of(), Set.of(), Map.of(), Map.of());

    /** Copies the maps in order. */
    public Meanings {
        told = Collections.unmodifiableMap(new LinkedHashMap<>(told));
        turned = Collections.unmodifiableSet(new LinkedHashSet<>(turned));
        edges = Collections.unmodifiableMap(new LinkedHashMap<>(edges));
        lines = Collections.unmodifiableMap(new LinkedHashMap<>(lines));
    }

    /**
     * What is said, what follows from joins, and what names say.
     *
     * @param told what the maker says, by the name of an edge or a line
     */
    static Meanings of(List<Piece> pieces, List<Seam> seams, Map<String, Serves> told) {
        return new MeaningSearch(pieces, seams).meanings(told);
    }

    /**
     * The same with what hems tell. A side or a neckline may be turned as well, so a hem tells it
     * of an unknown edge only.
     *
     * @param hems the edges that a hem turns
     */
    Meanings withTurned(Set<PieceEdge> hems) {
        Set<PieceEdge> all = new LinkedHashSet<>(turned);
        all.addAll(hems);
        Map<PieceEdge, Meaning> more = new LinkedHashMap<>(edges);
        hems.forEach(e -> more.putIfAbsent(e, new Meaning(Serves.HEM, Meaning.How.DERIVED)));
        return new Meanings(told, all, more, lines);
    }

    /** What an edge serves, if it is known. */
    public Optional<Meaning> edge(String piece, String edge) {
        return Optional.ofNullable(edges.get(new PieceEdge(piece, edge)));
    }

    /** Whether an edge is known to serve this. */
    public boolean serves(String piece, String edge, Serves what) {
        return edge(piece, edge).filter(m -> m.serves() == what).isPresent();
    }

    /** Whether an edge is turned up or under, and so sewn to no other. */
    public boolean isHem(String piece, String edge) {
        return turned.contains(new PieceEdge(piece, edge)) || serves(piece, edge, Serves.HEM);
    }

    /** Whether any edge of a piece is known to serve this. */
    public boolean has(Piece piece, Serves what) {
        return piece.shape().edgeNames().stream().anyMatch(e -> serves(piece.name(), e, what));
    }

    /** The names of all edges that serve this, in the order of letters, each with its meaning. */
    public Map<String, Meaning> edgeNames(Serves what) {
        Map<String, Meaning> names = new TreeMap<>();
        edges.forEach(
                (edge, meaning) -> {
                    if (meaning.serves() == what) {
                        names.putIfAbsent(edge.edge(), meaning);
                    }
                });
        return names;
    }

    /** Whether it is known of any edge among these names what it serves. */
    public boolean isKnown(Collection<String> names) {
        Set<PieceEdge> known = edges.keySet();
        return known.stream().anyMatch(edge -> names.contains(edge.edge()));
    }

    /** What a line serves, if it is known. */
    public Optional<Meaning> line(String name) {
        return Optional.ofNullable(lines.get(name));
    }

    /** The line that serves what is sought: one that is told, else the one of the plain word. */
    public Optional<String> lineFor(Predicate<Serves> sought) {
        return lines.entrySet().stream()
                .filter(line -> sought.test(line.getValue().serves()))
                .min(
                        Comparator.comparing(
                                        (Map.Entry<String, Meaning> line) ->
                                                line.getValue().how() != Meaning.How.TOLD)
                                .thenComparing(
                                        line ->
                                                !line.getValue()
                                                        .serves()
                                                        .word()
                                                        .equals(line.getKey()))
                                .thenComparing(line -> line.getValue().serves() == Serves.WAIST)
                                .thenComparing(Map.Entry::getKey))
                .map(Map.Entry::getKey);
    }
}
