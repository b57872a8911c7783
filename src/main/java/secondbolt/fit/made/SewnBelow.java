package secondbolt.fit.made;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import secondbolt.fit.seam.Lengths;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.pattern.EdgeSum;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.Seam;
import secondbolt.pattern.piece.Piece;

/**
 * What is sewn on across the end of a piece: a skirt at a waist seam, a tier, a cuff, a band.
 *
 * @param pattern the pattern
 * @param drawn how long its edges are as drawn
 */
record SewnBelow(Pattern pattern, Lengths drawn) {
    /** Wider than this across, a strip is no cuff or band; common practice, no source. */
    private static final Length WIDEST_BAND = Length.ofMillimetres(200);

    /** As far down as joins go. */
    Way followed(Way way) {
        Optional<Way> longer = step(way);
        return longer.map(this::followed).orElse(way);
    }

    private Optional<Way> step(Way way) {
        Way.Step last = way.last();
        if (pattern.meanings().turned().contains(last.end())) {
            return Optional.empty();
        }
        return on(last.end(), way.pieces())
                .flatMap(this::over)
                .filter(next -> !isLayerOf(next, last))
                .map(
                        next ->
                                isFolded(next, last.end())
                                        ? new Way.Step(
                                                Way.Kind.FOLDED,
                                                next.piece(),
                                                next.from(),
                                                next.to())
                                        : next)
                .map(way::and);
    }

    /** A band sewn on above the top of a way; nothing if a bodice is, or nothing. */
    Optional<Way.Step> above(PieceEdge top, Set<String> seen) {
        return on(top, seen)
                .filter(edge -> isBand(edge.piece()))
                .flatMap(this::over)
                .map(
                        step ->
                                isFolded(step, top)
                                        ? new Way.Step(
                                                Way.Kind.FOLDED,
                                                step.piece(),
                                                step.from(),
                                                step.to())
                                        : step);
    }

    /**
     * The last or first piece of a way, if it is a strip of which nothing tells whether it is
     * folded in two: its other edge is sewn to nothing and is no hem.
     */
    boolean mayBeFolded(Way.Step step) {
        boolean isEnd = LowerEdge.ENDS.stream().anyMatch(s -> serves(step.end(), s));
        return step.kind() == Way.Kind.ACROSS && !isEnd && isBand(step.piece()) && !isSewn(step);
    }

    private boolean serves(PieceEdge edge, Serves what) {
        return what == Serves.HEM
                ? pattern.meanings().isHem(edge.piece(), edge.edge())
                : pattern.meanings().serves(edge.piece(), edge.edge(), what);
    }

    private boolean isSewn(Way.Step step) {
        return pattern.seams().stream().anyMatch(seam -> seam.edges().contains(step.end()));
    }

    private boolean isBand(String name) {
        Piece piece = pattern.find(name).orElseThrow();
        return piece.shape()
                .asDrawn()
                .map(d -> Math.min(d.box().widthMm(), d.box().heightMm()))
                .or(
                        () ->
                                piece.shape()
                                        .asTaped()
                                        .map(t -> t.across().orShorter(t.along()).millimetres()))
                .filter(mm -> mm <= WIDEST_BAND.millimetres())
                .isPresent();
    }

    /** The edge of the next piece that this one is sewn to: the longest, if there are several. */
    private Optional<PieceEdge> on(PieceEdge end, Set<String> seen) {
        Set<PieceEdge> found = new LinkedHashSet<>();
        for (Seam seam : pattern.seams()) {
            across(seam.first().value(), seam.second().value(), end, found);
            across(seam.second().value(), seam.first().value(), end, found);
        }
        return found.stream()
                .filter(edge -> !seen.contains(edge.piece()) && goesOn(edge))
                .max(Comparator.comparing(edge -> drawn.edge(edge).orElse(Length.ZERO)));
    }

    private static void across(EdgeSum one, EdgeSum other, PieceEdge end, Set<PieceEdge> found) {
        if (one.pieceEdges().contains(end)) {
            found.addAll(other.pieceEdges());
        }
    }

    /** A facing lies behind, and what has a shoulder or a cap begins there. */
    private boolean goesOn(PieceEdge edge) {
        Piece piece = pattern.find(edge.piece()).orElseThrow();
        return piece.cuts().containsKey(Role.MAIN)
                && piece.seen() == Piece.Seen.OUTSIDE
                && !serves(edge, Serves.HEM)
                && !pattern.meanings().has(piece, Serves.SHOULDER)
                && !pattern.meanings().has(piece, Serves.CAP);
    }

    private Optional<Way.Step> over(PieceEdge on) {
        Piece piece = pattern.find(on.piece()).orElseThrow();
        Optional<String> end = LowerEdge.against(piece, on.edge(), pattern);
        if (end.isEmpty() && piece.shape().asTaped().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Way.Step(Way.Kind.ACROSS, on.piece(), on.edge(), end.orElse("lower edge")));
    }

    /** Folded in two, both its long edges are sewn to the same, or to each other. */
    private boolean isFolded(Way.Step next, PieceEdge on) {
        PieceEdge sewnBy = new PieceEdge(next.piece(), next.from());
        return pattern.seams().stream()
                .filter(seam -> seam.edges().contains(next.end()))
                .anyMatch(seam -> seam.edges().contains(on) || seam.edges().contains(sewnBy));
    }

    /** A second layer of a band, as large as it, lies behind it. */
    private boolean isLayerOf(Way.Step next, Way.Step last) {
        return last.kind() == Way.Kind.ACROSS
                && isBand(last.piece())
                && size(next.piece()).equals(size(last.piece()));
    }

    private Set<Length> size(String piece) {
        Set<Length> lengths = new LinkedHashSet<>();
        pattern.find(piece)
                .orElseThrow()
                .shape()
                .edgeLengths()
                .values()
                .forEach(l -> lengths.add(l.roundedTo(Length.ofMillimetres(1))));
        return lengths;
    }
}
