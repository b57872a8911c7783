package secondbolt.cutting.giving;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import secondbolt.cutting.line.CutPiece;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.cutting.line.TapedCut;
import secondbolt.measure.Plural;
import secondbolt.pattern.piece.Piece;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Gives;
import secondbolt.worksheet.Term;

/** What the pieces with their cutting lines contribute. */
public final class CuttingGiving {
    private CuttingGiving() {}

    /** Of all pieces. */
    public static Gives of(CuttingResult result) {
        List<Piece> pieces =
                Stream.concat(
                                result.pieces().stream().map(CutPiece::piece),
                                result.taped().stream().map(TapedCut::piece))
                        .toList();
        if (pieces.isEmpty()) {
            return Gives.NOTHING;
        }
        List<WorkStep> steps = new ArrayList<>();
        if (!result.pieces().isEmpty()) {
            steps.add(print(result.pieces().size()));
            steps.add(check());
        }
        MarkStep.of(pieces).ifPresent(steps::add);
        return new Gives(steps, List.of(), words(pieces));
    }

    private static WorkStep print(int count) {
        return WorkStep.of(
                "print",
                Stage.PLANNING,
                "Print "
                        + Plural.of(count, "piece")
                        + " full size, with the strips and cards, at 100 % or actual size, one"
                        + " printer for all. Throw earlier prints away.");
    }

    /** Both ways and on every sheet: one way alone may be off, and one sheet among good ones. */
    private static WorkStep check() {
        return WorkStep.of(
                        "check the print",
                        Stage.PLANNING,
                        "Measure the test square of every print both ways, 100 mm each, and the"
                                + " ruler of every page; only then join the pages at their marks.")
                .after("print", "There is nothing to measure before.");
    }

    private static List<Term> words(List<Piece> pieces) {
        List<Term> words = new ArrayList<>();
        words.add(
                new Term(
                        "seam allowance",
                        "The cloth beyond the sewing line, out to the cutting line, which lies"
                                + " inside the finished seam."));
        if (pieces.stream().anyMatch(piece -> !piece.features().notches().isEmpty())) {
            words.add(
                    new Term(
                            "notch",
                            "A small mark across an edge; two that meet in a seam tell how its"
                                    + " sides lie on each other."));
        }
        return words;
    }
}
