package secondbolt.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.fit.made.Made;
import secondbolt.fit.made.MadeMeasures;
import secondbolt.fit.result.BareLength;
import secondbolt.fit.result.CutFindings;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.result.TapedGaps;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.StrayPoint;
import secondbolt.wearer.BodyMeasure;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** What a maker should know of her seams, openings and alterations before she cuts. */
final class FitFindings {
    /** As closely as a garment is measured by tape. */
    private static final Convention AGREES =
            Convention.common(Length.ofInches(1, 2), Length.ofMillimetres(10));

    private static final Map<Serves, BodyMeasure> COMPARED =
            Map.of(
                    Serves.WAIST, BodyMeasure.WAIST,
                    Serves.WRIST, BodyMeasure.WRIST,
                    Serves.BUST, BodyMeasure.BUST,
                    Serves.HIP, BodyMeasure.HIP);

    private FitFindings() {}

    static List<Finding> of(FitResult result, List<OpeningCheck> openings, Tape tape) {
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
        findings.addAll(finished(result, tape));
        rights(result.pattern()).ifPresent(findings::add);
        openings.forEach(check -> opening.of(check).ifPresent(findings::add));
        return List.copyOf(findings);
    }

    /** What is written under {@code finished} beside what the pieces measure as drawn. */
    private static List<Finding> finished(FitResult result, Tape tape) {
        List<Finding> findings = new ArrayList<>();
        Map<BodyMeasure, Length> written = result.pattern().sizes().finished();
        List<Made> girths = written.isEmpty() ? List.of() : MadeMeasures.of(result).girths();
        written.forEach(
                (measure, length) -> {
                    List<Made> there =
                            girths.stream()
                                    .filter(
                                            g ->
                                                    g.of().map(COMPARED::get).stream()
                                                            .anyMatch(measure::equals))
                                    .toList();
                    boolean agrees =
                            there.stream()
                                    .map(girth -> girth.before().minus(length).size())
                                    .anyMatch(off -> !off.isLongerThan(AGREES.on(tape)));
                    if (!there.isEmpty() && !agrees) {
                        findings.add(differs(measure, length, there.get(0), tape));
                    }
                });
        return findings;
    }

    private static Finding differs(BodyMeasure measure, Length written, Made made, Tape tape) {
        return new Finding(
                "finished-differs",
                new Subject.Whole("finished"),
                Level.CAUTION,
                "Under `finished` the "
                        + measure.word()
                        + " is "
                        + tape.print(written)
                        + "; the pieces as drawn measure "
                        + tape.print(made.before())
                        + " "
                        + made.what()
                        + ".",
                "Measure both again. If the pieces are right, write `finished: {"
                        + measure.word()
                        + ": "
                        + BareLength.of(tape, made.before())
                        + "}`; the ease goes by it.");
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
                        + " of "
                        + stray.edge()
                        + " leaves the line of its neighbours.",
                "Look at the picture of the piece; if it is mistyped, correct it.");
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
