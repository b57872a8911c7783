package secondbolt.fit.alter;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;

/**
 * Pieces that go round together, because they are sewn to one another along edges that are widened.
 *
 * <p>Derived: round the body each such edge meets one other. A piece sewn to an edge that has
 * already met its own, or of a cloth that lies over or under, as a lining to the outside, lies on
 * the ring and is no part of it.
 *
 * @param pieces their names, in the order they are sewn
 * @param ply the cloth they are of; main and contrast are one outside
 * @param edges the widened edges that are sewn in it
 */
record BodyRing(Set<String> pieces, Role ply, Set<PieceEdge> edges) {
    BodyRing {
        pieces = new LinkedHashSet<>(pieces);
        edges = new LinkedHashSet<>(edges);
    }

    /** The rings that the joins make along edges of these names, in the order of the joins. */
    static List<BodyRing> of(Pattern pattern, List<String> names) {
        List<BodyRing> rings = new ArrayList<>();
        for (Seam seam : pattern.seams()) {
            of(seam, pattern, names, rings).ifPresent(ring -> add(ring, rings));
        }
        return rings;
    }

    private static Optional<BodyRing> of(
            Seam seam, Pattern pattern, List<String> names, List<BodyRing> before) {
        Set<PieceEdge> first = named(seam.first().value(), names);
        Set<PieceEdge> second = named(seam.second().value(), names);
        Set<PieceEdge> edges = new LinkedHashSet<>(first);
        edges.addAll(second);
        Set<Role> plies = new LinkedHashSet<>();
        Set<String> pieces = new LinkedHashSet<>();
        for (PieceEdge edge : edges) {
            pieces.add(edge.piece());
            pattern.find(edge.piece()).ifPresent(piece -> plies.add(ply(piece)));
        }
        boolean meetsAgain =
                before.stream().anyMatch(ring -> edges.stream().anyMatch(ring.edges::contains));
        return first.isEmpty() || second.isEmpty() || plies.size() != 1 || meetsAgain
                ? Optional.empty()
                : Optional.of(new BodyRing(pieces, plies.iterator().next(), edges));
    }

    /** The cloth a piece is of, first of all; what is in contrast is part of the outside. */
    static Role ply(Piece piece) {
        Role role = piece.cuts().keySet().iterator().next();
        return role == Role.CONTRAST ? Role.MAIN : role;
    }

    private static Set<PieceEdge> named(EdgeSum sum, List<String> names) {
        Set<PieceEdge> edges = new LinkedHashSet<>(sum.pieceEdges());
        edges.removeIf(edge -> !names.contains(edge.edge()));
        return edges;
    }

    /** Rings that share a piece are one. */
    private static void add(BodyRing joined, List<BodyRing> rings) {
        BodyRing all = new BodyRing(Set.of(), joined.ply, Set.of());
        List<BodyRing> apart = new ArrayList<>();
        for (BodyRing ring : rings) {
            if (ring.pieces.stream().anyMatch(joined.pieces::contains)) {
                all.take(ring);
            } else {
                apart.add(ring);
            }
        }
        all.take(joined);
        rings.clear();
        rings.addAll(apart);
        rings.add(all);
    }

    private void take(BodyRing other) {
        pieces.addAll(other.pieces);
        edges.addAll(other.edges);
    }

    /**
     * Whether every widened edge of its pieces is sewn in it, so that it goes all the way round.
     */
    boolean isClosed(Pattern pattern, List<String> names) {
        return pieces.stream()
                .flatMap(name -> pattern.find(name).stream())
                .allMatch(
                        piece ->
                                WidenShare.edgesOn(piece, names).stream()
                                        .map(edge -> new PieceEdge(piece.name(), edge))
                                        .allMatch(edges::contains));
    }
}
