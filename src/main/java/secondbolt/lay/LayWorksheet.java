package secondbolt.lay;

import java.util.List;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.giving.LayGiving;
import secondbolt.lay.picture.CuttingPlan;
import secondbolt.measure.Tape;
import secondbolt.pattern.Alteration;
import secondbolt.worksheet.Worksheet;

/**
 * Where every piece goes on the cloths there are, and what it would take from a bolt.
 *
 * @param result the designs
 * @param cutting the cutting lines that were laid
 * @param alterations as they are now
 * @param tape to print with
 */
record LayWorksheet(
        LayResult result, CuttingResult cutting, List<Alteration> alterations, Tape tape) {
    /** Copies the alterations. */
    LayWorksheet {
        alterations = List.copyOf(alterations);
    }

    Worksheet worksheet() {
        List<CuttingPlan> plans = CuttingPlan.of(result.made(), tape);
        return Worksheet.of(
                        "lay", "The lay", new LayNotes(result, cutting, alterations, tape)::notes)
                .showing(new LayPage(result, plans, tape)::blocks)
                .printing(new LaySheets(result, plans, tape)::sheets)
                .telling(new LayFigures(result, tape)::figures)
                .giving(LayGiving.of(result, cutting));
    }
}
