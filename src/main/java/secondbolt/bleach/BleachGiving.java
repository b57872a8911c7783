package secondbolt.bleach;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.bleach.plan.Agent;
import secondbolt.bleach.recipe.Treatment;
import secondbolt.task.Hazard;
import secondbolt.task.Stage;
import secondbolt.task.Wait;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Gives;
import secondbolt.worksheet.Term;

/**
 * What bleaching contributes to the order of work and to what is bought.
 *
 * @param treatments that are not refused
 * @param takesAcid whether a remover's last rinse has citric acid in it
 */
record BleachGiving(List<Treatment> treatments, boolean takesAcid) {
    private static final String DIRT =
            "Dirt, starch and softener keep it from the cloth and use it up, so it comes out in"
                    + " patches.";

    /** Source: common practice, no source: a sheet on a line. */
    private static final Wait DRIES =
            new Wait(
                    "it dries",
                    Duration.ofHours(4),
                    Duration.ofHours(24),
                    "a sheet on a line, common practice, no source");

    private static final List<Term> WORDS =
            List.of(
                    new Term(
                            "bleach",
                            "What whitens by oxygen or chlorine, an oxidant; it weakens the fibre as"
                                    + " well."),
                    new Term(
                            "colour remover",
                            "What takes dye out of cloth by reducing it, in a hot bath; the opposite of"
                                    + " a bleach, and never near one."));

    /** Of all treatments. */
    static Gives of(List<Treatment> all) {
        List<Treatment> done = all.stream().filter(t -> !t.isRefused()).toList();
        return done.isEmpty()
                ? Gives.NOTHING
                : new BleachGiving(done, BleachHazards.mayTakeAcid(all)).gives();
    }

    private Gives gives() {
        List<WorkStep> steps = new ArrayList<>();
        colourTest().ifPresent(steps::add);
        if (!bleached().isEmpty()) {
            steps.add(bleach());
            steps.add(rinse());
        }
        if (!stripped().isEmpty()) {
            steps.add(removeColour());
        }
        return new Gives(steps, new BleachNeeds(treatments, takesAcid).all(), WORDS);
    }

    private List<Treatment> bleached() {
        return treatments.stream().filter(t -> !t.isWith(Agent.REMOVER)).toList();
    }

    private List<Treatment> stripped() {
        return treatments.stream().filter(t -> t.isWith(Agent.REMOVER)).toList();
    }

    static String names(List<Treatment> some) {
        return some.stream().map(Treatment::name).collect(Collectors.joining(", "));
    }

    private Optional<WorkStep> colourTest() {
        List<Treatment> untested =
                bleached().stream()
                        .filter(t -> !BleachWork.hasNoColour(t))
                        .filter(t -> t.plan().evidence().colourStays().isEmpty())
                        .toList();
        return untested.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        WorkStep.of(
                                        "colour test",
                                        Stage.PREPARING,
                                        names(untested)
                                                + ": "
                                                + BleachWork.dropTest(untested.get(0)))
                                .minding(hazards(untested)));
    }

    /** A step that all that must be done to the cloth before it gets wet for good comes before. */
    private static WorkStep prepared(String name, String text) {
        return WorkStep.of(name, Stage.DYEING, text)
                .after("weigh", "Wet cloth cannot be weighed, and the bath goes by the dry mass.")
                .after("dry mildew", "Spores spread in a warm bath.")
                .after("mark square", "A square marked later shows only part of the shrinkage.")
                .after("prewash", DIRT)
                .after("prewash again", DIRT);
    }

    private WorkStep bleach() {
        String text =
                bleached().stream()
                        .map(t -> t.name() + " in " + t.agent().orElseThrow().word())
                        .collect(Collectors.joining("; "));
        return prepared(
                        "bleach",
                        text + ", by its label and the bleach sheet: weak, moved, never dried in.")
                .after("colour test", "Bleach takes colours that nobody tested, for good.")
                .after("unpick", "Folds and seams bleach paler at their edges than inside.")
                .checking(
                        "The fibre is known, and the label of the bleach is read.",
                        "No acid, no ammonia, no colour remover in the room; windows open.",
                        "A thin place held when it was pulled.")
                .minding(hazards(bleached()))
                .wet();
    }

    private WorkStep rinse() {
        return WorkStep.of(
                        "rinse bleach",
                        Stage.DYEING,
                        names(bleached())
                                + ": rinse several times in fresh cold water until no smell is left,"
                                + " with nothing in it, then wash it once by itself.")
                .after("bleach", "What is left in the cloth goes on eating it.")
                .waiting(DRIES)
                .minding(hazards(bleached()))
                .wet();
    }

    private WorkStep removeColour() {
        return prepared(
                        "remove colour",
                        names(stripped())
                                + ": take the colour out by the remover's leaflet and the sheet, rinse"
                                + " until the water is clear, wash it once by itself.")
                .after("unpick", "Folds and seams keep their colour inside.")
                .after(
                        "rinse bleach",
                        "A bleach and a colour remover react violently: all bleach is rinsed and"
                                + " washed out, and put away, before a remover is opened.")
                .checking(
                        "An offcut went through the whole of it and held when it was pulled.",
                        "No bleach in the room; the vessel never held any.")
                .waiting(DRIES)
                .minding(hazards(stripped()))
                .wet();
    }

    private Hazard[] hazards(List<Treatment> some) {
        Set<Hazard> hazards = new LinkedHashSet<>();
        some.forEach(t -> hazards.addAll(BleachHazards.of(t, takesAcid)));
        return hazards.toArray(Hazard[]::new);
    }
}
