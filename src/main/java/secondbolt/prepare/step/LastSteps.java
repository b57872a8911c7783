package secondbolt.prepare.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.prepare.due.Preparation;
import secondbolt.prepare.due.PreparedCloth;
import secondbolt.task.Hazard;
import secondbolt.task.Stage;
import secondbolt.task.Wait;
import secondbolt.task.WorkStep;
import secondbolt.textile.Textile;

/**
 * What follows every wet step, whatever topic that is of.
 *
 * @param all the cloths
 */
record LastSteps(Preparation all) {
    private static final Wait FLAT =
            Wait.hours("it lies flat", 4, "before cloth is measured: AATCC 135");
    private static final String PILE = "A pile is steamed from the back and never pressed flat.";

    /** All of them, in order; the survey is done already where nothing calls for another. */
    List<WorkStep> steps() {
        List<WorkStep> steps = new ArrayList<>();
        press().ifPresent(steps::add);
        steps.add(survey());
        return steps;
    }

    private Optional<WorkStep> press() {
        List<PreparedCloth> those = all.those(PreparedCloth::isPressed);
        return those.isEmpty() ? Optional.empty() : Optional.of(press(those));
    }

    private WorkStep press(List<PreparedCloth> those) {
        boolean hasPile =
                those.stream()
                        .anyMatch(
                                c ->
                                        c.cloth()
                                                .cloth()
                                                .textile()
                                                .nap()
                                                .equals(Optional.of(Textile.Nap.ONE_WAY)));
        WorkStep press =
                afterWetSteps(
                        WorkStep.of(
                                        "press",
                                        Stage.PREPARING,
                                        "Press it flat along the threads, without pulling, at most "
                                                + new ClothStep(all)
                                                        .heats(those, c -> c.heat().ironWords())
                                                + "."
                                                + (hasPile ? " " + PILE : ""))
                                .minding(Hazard.IRON),
                        "It would be pressed before it draws in.");
        return all.hasAny(PreparedCloth::isWetDue) ? press.waiting(FLAT) : press;
    }

    private WorkStep survey() {
        boolean isDue = all.hasAny(PreparedCloth::isSurveyDue);
        WorkStep survey =
                WorkStep.of(
                        "survey",
                        Stage.PREPARING,
                        "Hold it to the light, edge by edge, and mark every hole, stain and thin"
                                + " place; measure its square, its sides and a diagonal, and write"
                                + " them all.");
        WorkStep after =
                afterWetSteps(survey, "Thin places open into holes in the wash, and sizes change.");
        return isDue
                ? after.after("press", "Creases hide thin places and shorten the tape's way.")
                : after.done();
    }

    /** Whatever topic the wet step is of. */
    private static WorkStep afterWetSteps(WorkStep step, String why) {
        WorkStep after = step;
        for (String wet :
                List.of(
                        "prewash",
                        "prewash again",
                        "rinse bleach",
                        "remove colour",
                        "wash off",
                        "dry")) {
            after = after.after(wet, why);
        }
        return after;
    }
}
