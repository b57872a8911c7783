package secondbolt.prepare;

import java.util.ArrayList;
import java.util.List;
import secondbolt.measure.Tape;
import secondbolt.prepare.due.Preparation;
import secondbolt.prepare.due.PreparedCloth;
import secondbolt.prepare.step.PrepareSteps;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Assumed;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Gives;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Worksheet;

/**
 * The preparing of all cloths, to be shown.
 *
 * @param all the cloths
 * @param tape to print with
 */
record PrepareWorksheet(Preparation all, Tape tape) {
    Worksheet worksheet() {
        List<WorkStep> steps = PrepareSteps.of(all, tape);
        return Worksheet.of("prepare", "Preparing the cloth", this::notes)
                .showing(() -> new PreparePage(all, tape).blocks())
                .printing(() -> WashDay.sheets(all, steps, tape))
                .telling(() -> PrepareFigures.of(all))
                .giving(new Gives(steps, PrepareNeeds.of(all), PrepareNeeds.words(all)));
    }

    private Notes notes() {
        List<Finding> findings = new ArrayList<>();
        for (PreparedCloth cloth : all.cloths()) {
            findings.addAll(new StateFindings(cloth).findings());
            findings.addAll(new FinishFindings(cloth).findings());
            findings.addAll(new WashedFindings(cloth, tape).findings());
        }
        return new Notes(findings, assumed(), List.of());
    }

    private List<Assumed> assumed() {
        return all.those(c -> c.fibre().isPresent() && Evidence.isUntold(c)).stream()
                .map(
                        cloth ->
                                new Assumed(
                                        "how the fibre of " + cloth.name() + " is known",
                                        "guessed: iron and wash are tried on a scrap first",
                                        "not told; the safer one"))
                .toList();
    }
}
