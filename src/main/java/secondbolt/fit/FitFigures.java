package secondbolt.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.figure.Figures;
import secondbolt.fit.alter.Altered;
import secondbolt.fit.made.Made;
import secondbolt.fit.made.MadeMeasures;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.seam.SeamCheck;
import secondbolt.fit.seam.SewnLengths;
import secondbolt.fit.size.SizeResult;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.pattern.piece.ShapeKeys;
import secondbolt.wearer.FinishedMeasure;

/** What other programs read of the pattern. */
final class FitFigures {
    private FitFigures() {}

    static Figures of(FitResult result, MadeMeasures made, SizeResult size) {
        Figures pieces = new Figures();
        for (int i = 0; i < result.pieces().size(); i++) {
            Piece piece = result.pieces().get(i);
            pieces.inside(
                    piece.name(),
                    figures(
                            new SewnLengths(result.pattern().allowance()),
                            result.pattern().pieces().get(i),
                            piece));
        }
        return size.addTo(new Figures())
                .list("finished", made.all().stream().map(FitFigures::figures).toList())
                .inside("pieces", pieces)
                .list("seams", result.seams().stream().map(FitFigures::figures).toList())
                .list(
                        "followers",
                        result.altered().stream().flatMap(FitFigures::followers).toList());
    }

    private static Figures figures(SewnLengths lines, Piece drawn, Piece piece) {
        Figures figures = new Figures();
        Optional<PieceShape.Drawn> shape = piece.shape().asDrawn();
        if (shape.isPresent()) {
            figures.points("outline", ShapeKeys.points(shape.get()));
        }
        Map<String, Length> known = new LinkedHashMap<>(lines.of(piece));
        known.keySet().removeIf(piece.shape()::isOpen);
        return figures.lengths("edges", known).lengths("edges_before", lines.of(drawn));
    }

    private static Figures figures(Made made) {
        return new Figures()
                .text("what", made.what())
                .text(
                        "measures",
                        String.join(
                                ", ", made.measures().stream().map(FinishedMeasure::word).toList()))
                .length("drawn", made.before())
                .toldLength("altered", made.after(), "finished, " + made.what());
    }

    private static Figures figures(SeamCheck check) {
        if (!check.isKnown()) {
            return new Figures().text("join", check.seam().written()).text("meets", "unknown");
        }
        return new Figures()
                .text("join", check.seam().written())
                .lengths("lengths", List.of(check.after().first(), check.after().second()))
                .length("difference", check.after().difference())
                .length("allowed", check.allowed())
                .claim("meets", check.meets());
    }

    private static Stream<Figures> followers(Altered altered) {
        return altered.changes().stream()
                .map(
                        change ->
                                new Figures()
                                        .text("alteration", altered.alteration().words())
                                        .text("what", change.edge().toString())
                                        .length("before", change.before())
                                        .length("after", change.after()));
    }
}
