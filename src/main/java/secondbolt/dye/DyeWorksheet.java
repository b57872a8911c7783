package secondbolt.dye;

import java.util.List;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.bath.PieceParts;
import secondbolt.dye.guide.DyePrint;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Worksheet;

/**
 * All colours, to be shown.
 *
 * @param batches each colour worked out, in the maker's order
 * @param pieces of the pattern, if there is one
 * @param tape to print with
 */
record DyeWorksheet(List<DyeBatch> batches, PieceParts pieces, Tape tape) {
    Worksheet worksheet() {
        DyePrint print = new DyePrint(tape);
        return Worksheet.of("dye", "Dyeing", () -> DyeNotes.of(batches, pieces, print))
                .showing(() -> new DyePage(print).blocks(batches))
                .printing(() -> new DyeSheets(print).of(batches))
                .telling(() -> DyeFigures.of(batches))
                .giving(DyeGiving.of(batches, print));
    }
}
