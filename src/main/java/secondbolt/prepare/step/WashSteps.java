package secondbolt.prepare.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import secondbolt.prepare.due.Preparation;
import secondbolt.prepare.due.PreparedCloth;
import secondbolt.task.Hazard;
import secondbolt.task.WorkStep;
import secondbolt.textile.fibre.FibreKind;
import secondbolt.textile.state.Finish;

/**
 * The washes.
 *
 * @param all the cloths
 */
record WashSteps(Preparation all) {
    private static final String STARCH_OUT =
            "Starch is out when the rinse is clear and the cloth no longer slippery.";
    private static final String WOOL =
            "Wool lies 30 minutes in still, hand-warm water, is not rubbed, and dries flat.";
    private static final String TENDER_WET =
            "Viscose and its like tear easily while they are wet: do not wring them.";
    private static final String KNIT = "A knit dries flat.";
    private static final String GROWS =
            "A wash draws up the seams, and holes, webs and stains grow in it.";

    /** All of them, in order. */
    List<WorkStep> steps() {
        List<WorkStep> steps = new ArrayList<>();
        prewash().ifPresent(steps::add);
        prewashAgain().ifPresent(steps::add);
        return steps;
    }

    private Optional<WorkStep> step(String name, Predicate<PreparedCloth> like, String text) {
        return new ClothStep(all).of(name, like, text);
    }

    private Optional<WorkStep> prewash() {
        Predicate<PreparedCloth> due = PreparedCloth::isWashDue;
        return step("prewash", due, washed(due))
                .map(
                        step ->
                                step.after("freeze", DrySteps.SPREADS)
                                        .after("dry mildew", "Mildew grows in the damp.")
                                        .after("air", "Heat drives the vapour out at you.")
                                        .after("unpick", GROWS)
                                        .after("weigh", "Dry mass is lost to a wash.")
                                        .after(
                                                "mark square",
                                                "Once it is washed, nobody can tell how much it"
                                                        + " drew in.")
                                        .checking(
                                                "Is it weighed dry, is its square marked and written"
                                                        + " down?",
                                                "Does a wet white rag that is pressed on a corner"
                                                        + " stay white? If not, wash it alone.")
                                        .minding(Hazard.ELECTRIC)
                                        .waiting(DrySteps.DRIED)
                                        .wet());
    }

    private Optional<WorkStep> prewashAgain() {
        Predicate<PreparedCloth> due = PreparedCloth::isWashDueAgain;
        return step("prewash again", due, washed(due) + " Then measure the square once more.")
                .map(
                        step ->
                                step.after("prewash", "It is the wash after the first.")
                                        .minding(Hazard.ELECTRIC)
                                        .waiting(DrySteps.DRIED)
                                        .wet());
    }

    private String washed(Predicate<PreparedCloth> like) {
        List<PreparedCloth> those = all.those(like);
        return "wash and dry it as the garment will be, at most "
                + new ClothStep(all).heats(those, c -> c.heat().washWords())
                + ", without softener. Overcast raw edges that fray first."
                + told(those, c -> c.state().has(Finish.STARCH), STARCH_OUT)
                + told(those, PreparedCloth::felts, WOOL)
                + told(those, c -> isOf(c, FibreKind.Family.REGENERATED), TENDER_WET)
                + told(those, c -> c.cloth().cloth().textile().stretchOrNone().isAny(), KNIT);
    }

    private static boolean isOf(PreparedCloth cloth, FibreKind.Family family) {
        return cloth.fibre().filter(f -> f.hasAny(kind -> kind.family() == family)).isPresent();
    }

    private static String told(
            List<PreparedCloth> those, Predicate<PreparedCloth> like, String words) {
        return those.stream().anyMatch(like) ? " " + words : "";
    }
}
