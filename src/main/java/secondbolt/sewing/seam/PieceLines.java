package secondbolt.sewing.seam;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.fit.result.FitResult;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.Piece;
import secondbolt.sewing.plan.OwnLine;
import secondbolt.sewing.plan.SewingPlan;
import secondbolt.worksheet.Sentence;

/**
 * What is sewn on a piece for itself: darts, lines of her own, stay-stitching; and what nobody has
 * told of.
 *
 * @param fit the altered pattern
 * @param shapes of its edges
 * @param supply how many there are of each edge
 * @param plan what she tells
 */
record PieceLines(FitResult fit, EdgeShapes shapes, EdgeSupply supply, SewingPlan plan) {
    /** Derived: from the edge to the point, half of what the dart takes up being folded away. */
    List<SewnLine> darts() {
        List<SewnLine> darts = new ArrayList<>();
        for (Piece piece : fit.pieces()) {
            int times = EdgeSupply.copies(piece) * (piece.fold().isPresent() ? 2 : 1);
            for (Piece.Dart dart : piece.features().darts()) {
                double legMm =
                        StrictMath.hypot(dart.deep().millimetres(), dart.takes().millimetres() / 2);
                darts.add(
                        new SewnLine(
                                SewnLine.Kind.DART,
                                Sentence.capital(new PieceEdge(piece.name(), dart.edge()).heading())
                                        + ", dart",
                                EdgeSupply.role(piece),
                                Set.of(),
                                Optional.of(Length.ofComputedMillimetres(legMm)),
                                times));
            }
        }
        return darts;
    }

    List<SewnLine> own() {
        return plan.also().stream().map(this::own).toList();
    }

    private SewnLine own(OwnLine line) {
        Optional<Length> once = line.along().isEmpty() ? line.length() : Optional.of(Length.ZERO);
        Set<PieceEdge> edges = new HashSet<>();
        for (var placed : line.along()) {
            PieceEdge edge = placed.value();
            edges.add(edge);
            once = once.flatMap(sum -> all(edge).map(sum::plus));
        }
        return new SewnLine(
                SewnLine.Kind.OWN,
                Sentence.capital(line.what()),
                Role.MAIN,
                edges,
                once,
                line.rows());
    }

    /** An edge on all copies; nothing if the tape does not tell. */
    private Optional<Length> all(PieceEdge edge) {
        Piece piece = fit.find(edge.piece()).orElseThrow();
        return piece.shape().isOpen(edge.edge())
                ? Optional.empty()
                : fit.after().edge(edge).map(length -> length.times(Math.max(1, supply.of(edge))));
    }

    /**
     * Curved edges that handling stretches: those of main pieces that nothing stiffens, but for
     * caps, which are eased, and hems. Common practice, no source.
     */
    List<SewnLine> stays() {
        List<SewnLine> stays = new ArrayList<>();
        for (Piece piece : fit.pieces()) {
            if (EdgeSupply.role(piece) != Role.MAIN || piece.copies(Role.INTERFACING) > 0) {
                continue;
            }
            piece.shape().edgeNames().stream()
                    .map(name -> new PieceEdge(piece.name(), name))
                    .filter(edge -> supply.of(edge) > 0 && isStayed(edge))
                    .forEach(edge -> stays.add(stay(edge)));
        }
        return stays;
    }

    private boolean isStayed(PieceEdge edge) {
        return shapes.of(edge) == JoinLine.Curve.CURVED
                && !fit.pattern().meanings().isHem(edge.piece(), edge.edge())
                && !fit.pattern().meanings().serves(edge.piece(), edge.edge(), Serves.CAP);
    }

    private SewnLine stay(PieceEdge edge) {
        return new SewnLine(
                SewnLine.Kind.STAY,
                Sentence.capital(edge.heading()),
                Role.MAIN,
                Set.of(edge),
                fit.after().edge(edge),
                supply.of(edge));
    }

    /** Edges in no join, no hem and no line of hers, in the order of the pieces. */
    List<SewnLines.Untold> untold(Set<PieceEdge> hemmed) {
        Set<PieceEdge> told = new HashSet<>(hemmed);
        fit.pattern().seams().forEach(seam -> told.addAll(seam.edges()));
        plan.also().forEach(line -> line.along().forEach(edge -> told.add(edge.value())));
        List<SewnLines.Untold> untold = new ArrayList<>();
        supply.counts()
                .forEach(
                        (edge, count) -> {
                            if (count > 0 && !told.contains(edge)) {
                                all(edge).ifPresent(l -> untold.add(new SewnLines.Untold(edge, l)));
                            }
                        });
        return untold;
    }
}
