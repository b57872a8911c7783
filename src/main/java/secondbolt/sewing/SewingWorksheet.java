package secondbolt.sewing;

import java.util.List;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Worksheet;

/**
 * The sewing, to be shown.
 *
 * @param result worked out
 * @param tape to print with
 */
record SewingWorksheet(SewingResult result, Tape tape) {
    Worksheet worksheet() {
        return Worksheet.of(
                        "sewing", "Seams, thread and needle", () -> SewingNotes.of(result, tape))
                .showing(() -> new SewingPage(result, tape).blocks())
                .printing(this::sheets)
                .telling(() -> SewingFigures.of(result))
                .giving(new SewingGives(result, tape).all());
    }

    private List<Sheet> sheets() {
        return result.lines().joins().isEmpty()
                ? List.of()
                : List.of(new SeamCard(result, tape).sheet());
    }
}
