package secondbolt.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import secondbolt.cloth.yields.BoltWidth;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.cutting.line.TapedCut;
import secondbolt.garment.Role;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.piece.LayPieces;
import secondbolt.lay.plan.Design;
import secondbolt.lay.plan.Interfacing;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.piece.Piece;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Subject;

/**
 * What a maker should read of her lay.
 *
 * @param result the designs
 * @param cutting the cutting lines that were laid
 * @param alterations as they are now
 * @param tape to print with
 */
record LayNotes(LayResult result, CuttingResult cutting, List<Alteration> alterations, Tape tape) {
    /** The narrowest interfacing. */
    private static final Convention NARROWEST =
            new Convention(
                    Length.ofInches(20, 1),
                    Length.ofMillimetres(500),
                    "Interfacings, EM014, Washington State University Extension; the metric"
                            + " neighbour is from memory");

    /** Copies the alterations. */
    LayNotes {
        alterations = List.copyOf(alterations);
    }

    Notes notes() {
        List<Finding> findings = new ArrayList<>(LayFindings.of(result, tape));
        findings.addAll(unused());
        findings.addAll(new PinFindings(result, pieces(), alterations, tape).findings());
        return new Notes(findings, assumed(), open());
    }

    private Map<String, Piece> pieces() {
        return new LayPieces(cutting).byName();
    }

    /** Pieces that no design names are not laid, which must not be missed. */
    private List<Finding> unused() {
        Map<String, Design> designs = result.plan().designs();
        if (designs.isEmpty()) {
            return List.of();
        }
        return pieces().keySet().stream()
                .filter(name -> designs.values().stream().noneMatch(d -> d.needs(name)))
                .map(LayNotes::unused)
                .toList();
    }

    private static Finding unused(String piece) {
        return new Finding(
                "piece-in-no-design",
                new Subject.Piece(piece),
                Finding.Level.CAUTION,
                "No design uses " + piece + ", so it is laid in none, and no cloth counted for it.",
                "Name it under `uses` of the designs that have it, or take it out of the"
                        + " pattern.");
    }

    private List<Assumed> assumed() {
        List<Assumed> assumed = new ArrayList<>();
        if (result.plan().rules().gap().isEmpty()) {
            assumed.add(
                    new Assumed(
                            "the gap between two cutting lines",
                            tape.printSmall(result.plan().gapOrUsual()),
                            "room for the shears; " + Convention.COMMON_PRACTICE));
        }
        if (!result.made().bolts().isEmpty()) {
            assumed.add(
                    new Assumed(
                            "how much of a bolt the selvages take",
                            tape.print(BoltWidth.SELVAGES.on(tape)) + " together",
                            BoltWidth.SELVAGES.source()));
        }
        assumed.addAll(assumedOfInterfacing());
        cutting.taped().forEach(taped -> assumed.add(assumed(taped)));
        return assumed;
    }

    private Assumed assumed(TapedCut taped) {
        return new Assumed(
                "the cutting line of " + taped.piece().name(),
                "a box of "
                        + tape.print(Length.ofComputedMillimetres(taped.whole().widthMm()))
                        + " by "
                        + tape.print(Length.ofComputedMillimetres(taped.whole().heightMm()))
                        + taped.piece().fold().map(f -> ", opened at " + f).orElse(""),
                "known by tape only: the box, with the widest allowances its edges may have at its"
                        + " sides unless they are included; "
                        + Convention.COMMON_PRACTICE);
    }

    private List<Assumed> assumedOfInterfacing() {
        boolean asked =
                result.made().bolts().stream().anyMatch(bolt -> bolt.role() == Role.INTERFACING);
        if (!asked) {
            return List.of();
        }
        List<Assumed> assumed = new ArrayList<>();
        if (result.plan().interfacing().flatMap(Interfacing::width).isEmpty()) {
            assumed.add(
                    new Assumed(
                            "the width of the interfacing",
                            "usual widths",
                            "sold "
                                    + tape.print(NARROWEST.on(tape))
                                    + " wide and wider; write `interfacing: {width: …}`"));
        }
        assumed.add(
                new Assumed(
                        "how long the interfacing is",
                        "all of its width used, one layer",
                        "sewn-in kinds may need a little for shrinkage; "
                                + Convention.COMMON_PRACTICE));
        return assumed;
    }

    private List<Open> open() {
        return result.open().stream()
                .map(
                        cloth ->
                                new Open(
                                        "the finished size of " + cloth,
                                        "whether the pieces fit on it",
                                        "Measure it and its shrinkage, as told with the cloth."))
                .toList();
    }
}
