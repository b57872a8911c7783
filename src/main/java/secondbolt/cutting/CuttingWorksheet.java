package secondbolt.cutting;

import java.util.ArrayList;
import java.util.List;
import secondbolt.cutting.giving.CuttingGiving;
import secondbolt.cutting.line.CutPiece;
import secondbolt.cutting.line.CuttingCalculation;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Point;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Subject;
import secondbolt.worksheet.Worksheet;

/**
 * The pieces of a pattern with their cutting lines, full size.
 *
 * @param result the pieces
 * @param tape to print with
 */
public record CuttingWorksheet(CuttingResult result, Tape tape) {
    /** Its page, sheets and figures. */
    public Worksheet worksheet() {
        return Worksheet.of(
                        "cutting", "The pieces", () -> new Notes(findings(), assumed(), List.of()))
                .showing(() -> new CuttingPage(result, tape).blocks())
                .printing(this::sheets)
                .telling(() -> CuttingFigures.of(result))
                .giving(CuttingGiving.of(result));
    }

    private List<Sheet> sheets() {
        List<Sheet> sheets = new ArrayList<>(PieceSheets.of(result, tape));
        sheets.add(GridSheet.of(tape));
        return List.copyOf(sheets);
    }

    private List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        result.pieces()
                .forEach(
                        piece ->
                                piece.crossing()
                                        .ifPresent(at -> findings.add(crossing(piece, at))));
        result.oneHand().forEach(piece -> findings.add(HandFinding.of(piece)));
        return List.copyOf(findings);
    }

    private Finding crossing(CutPiece piece, Point at) {
        return new Finding(
                "cutting-line-crosses",
                new Subject.Piece(piece.name()),
                Finding.Level.STOP,
                (piece.pastFold().isPresent()
                                ? "The cutting line reaches past the fold near "
                                : "The cutting line crosses itself near ")
                        + tape.print(Length.ofComputedMillimetres(at.xMm()))
                        + " across, "
                        + tape.print(Length.ofComputedMillimetres(at.yMm()))
                        + " along.",
                "Write a narrower allowance for the edge there, or correct a mistyped point.");
    }

    private List<Assumed> assumed() {
        return result.isAssumed()
                ? List.of(
                        new Assumed(
                                "seam allowance",
                                tape.print(result.allowance()) + ", not in the outlines",
                                CuttingCalculation.USUAL_ALLOWANCE.source()
                                        + "; look at yours and write `seam allowance`"))
                : List.of();
    }
}
