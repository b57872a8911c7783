package secondbolt.lay;

import java.util.ArrayList;
import java.util.List;
import secondbolt.cloth.yields.BoltWidth;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.garment.Role;
import secondbolt.lay.design.LayResult;
import secondbolt.measure.Tape;
import secondbolt.pattern.piece.Piece;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Open;

/**
 * What a maker should read of her lay.
 *
 * @param result the designs
 * @param cutting the cutting lines that were laid
 * @param tape to print with
 */
record LayNotes(LayResult result, CuttingResult cutting, Tape tape) {
    Notes notes() {
        return new Notes(LayFindings.of(result, tape), assumed(), open());
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
                            tape.print(BoltWidth.SELVAGES.on(tape)) + " in all",
                            BoltWidth.SELVAGES.source()));
        }
        assumed.addAll(assumedOfInterfacing());
        List<String> taped = cutting.taped().stream().map(Piece::name).toList();
        if (!taped.isEmpty()) {
            assumed.add(
                    new Assumed(
                            "the cutting line of " + String.join(", ", taped),
                            "the box with the seam allowance all round",
                            "known by tape only; " + Convention.COMMON_PRACTICE));
        }
        return assumed;
    }

    private List<Assumed> assumedOfInterfacing() {
        boolean asked =
                result.made().bolts().stream().anyMatch(bolt -> bolt.role() == Role.INTERFACING);
        if (!asked) {
            return List.of();
        }
        List<Assumed> assumed = new ArrayList<>();
        if (result.plan().interfacing().isEmpty()) {
            assumed.add(
                    new Assumed(
                            "the width of the interfacing",
                            "usual widths",
                            "sold 20 in wide and wider; write `interfacing: {width: …}`"));
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
