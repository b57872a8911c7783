package secondbolt.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.fit.made.FinishedBesidePieces;
import secondbolt.fit.made.MadeMeasures;
import secondbolt.fit.result.CutFindings;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.result.TapedGaps;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Tape;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.StrayPoint;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** What a maker should know of her seams, openings and alterations before she cuts. */
final class FitFindings {
    private FitFindings() {}

    static List<Finding> of(
            FitResult result, MadeMeasures made, List<OpeningCheck> openings, Tape tape) {
        TapedGaps gaps = TapedGaps.of(result, tape);
        SeamFindings seam = new SeamFindings(result, gaps, tape);
        AlterationFindings alterations = new AlterationFindings(result, tape);
        OpeningFindings opening = new OpeningFindings(gaps, tape);
        List<Finding> findings = new ArrayList<>();
        result.seams().forEach(check -> seam.of(check).ifPresent(findings::add));
        result.cutSeams().forEach(check -> findings.add(seam.asCut(check)));
        findings.addAll(new CutFindings(result, tape).all());
        findings.addAll(alterations.unjoined());
        findings.addAll(alterations.shares());
        StretchingWaist.in(result).forEach(w -> findings.add(w.finding(result.pattern())));
        result.pattern().pieces().stream().flatMap(FitFindings::points).forEach(findings::add);
        result.pieces().stream().flatMap(p -> taken(result, p, tape)).forEach(findings::add);
        findings.addAll(FinishedBesidePieces.of(result.pattern(), made, tape));
        rights(result.pattern()).ifPresent(findings::add);
        openings.forEach(check -> opening.of(check).ifPresent(findings::add));
        return List.copyOf(findings);
    }

    private static Stream<Finding> points(Piece piece) {
        return piece.shape().asDrawn().stream()
                .flatMap(drawn -> StrayPoint.in(drawn).stream())
                .map(stray -> point(piece, stray));
    }

    private static Finding point(Piece piece, StrayPoint stray) {
        return new Finding(
                "piece-stray-point",
                new Subject.Piece(piece.name()),
                Level.CAUTION,
                "Point "
                        + stray.number()
                        + " of the picture, on its edge "
                        + stray.edge()
                        + ", leaves the line of its neighbours.",
                "If the picture of the piece bends there as the pattern does, all is well; if not,"
                        + " correct the point: it may be mistyped.");
    }

    /** Edges of which darts and pleats leave nothing, as after a narrowing. */
    private static Stream<Finding> taken(FitResult result, Piece piece, Tape tape) {
        return piece.shape().edgeNames().stream()
                .filter(edge -> piece.takenFrom(edge).isPositive())
                .map(edge -> new PieceEdge(piece.name(), edge))
                .filter(edge -> !result.after().edge(edge).orElseThrow().isPositive())
                .map(edge -> taken(piece, edge, tape));
    }

    private static Finding taken(Piece piece, PieceEdge edge, Tape tape) {
        return new Finding(
                "edge-all-taken-up",
                new Subject.Edges(edge.piece() + ", " + edge.edge(), Set.of(edge)),
                Level.STOP,
                "Darts and pleats take up "
                        + tape.printBoth(piece.takenFrom(edge.edge()))
                        + " of "
                        + edge.piece()
                        + ", "
                        + edge.edge()
                        + ": where it is sewn, nothing is left of it.",
                "Let them take up less, or make the edge longer.");
    }

    private static Optional<Finding> rights(Pattern pattern) {
        return pattern.rights() != Pattern.Rights.BOUGHT
                ? Optional.empty()
                : Optional.of(
                        new Finding(
                                "pattern-bought",
                                new Subject.Whole("pattern"),
                                Level.NOTE,
                                "The pattern is bought: its outlines and full-size pieces are for"
                                        + " you alone.",
                                "Do not pass on the piece sheets or this page; the numbers of your"
                                        + " alterations you may."));
    }
}
