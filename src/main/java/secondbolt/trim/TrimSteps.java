package secondbolt.trim;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import secondbolt.task.Hazard;
import secondbolt.task.Stage;
import secondbolt.task.Wait;
import secondbolt.task.WorkStep;
import secondbolt.trim.bound.BindingResult;
import secondbolt.trim.fused.InterfacingResult;

/** What is done with interfacing, binding and elastic, and what must come before it. */
final class TrimSteps {
    private static final List<String> WET =
            List.of(
                    "prewash",
                    "prewash again",
                    "bleach",
                    "rinse bleach",
                    "remove colour",
                    "dye",
                    "fix dye",
                    "wash off",
                    "dry");

    private static final Wait COOLS =
            new Wait(
                    "it cools flat where it lies",
                    Duration.ofMinutes(10),
                    Duration.ofMinutes(30),
                    "until it is cold, say a sewing school newsletter (2014) and class notes on"
                            + " fusing; the minutes are common practice, and thick cloth takes the"
                            + " longer");

    private TrimSteps() {}

    static List<WorkStep> of(TrimResult result) {
        List<WorkStep> steps = new ArrayList<>();
        if (result.interfacing().filter(InterfacingResult::isFused).isPresent()) {
            steps.add(pressTest());
            steps.add(fuse());
        }
        if (result.interfacing().filter(InterfacingResult::isSewnIn).isPresent()) {
            steps.add(basteInterfacing());
        }
        boolean hasEdges =
                result.bindings().stream().anyMatch(b -> b.binding().closesOverTheEdge());
        if (hasEdges) {
            steps.add(bind());
        }
        if (result.bindings().stream().anyMatch(TrimSteps::isSeam)) {
            steps.add(bindSeams(result));
        }
        if (!result.elastics().isEmpty()) {
            steps.add(elastic());
        }
        return steps;
    }

    private static boolean isSeam(BindingResult binding) {
        return !binding.binding().closesOverTheEdge();
    }

    private static WorkStep afterWet(WorkStep step, String why) {
        WorkStep after = step;
        for (String wet : WET) {
            after = after.after(wet, why);
        }
        return after;
    }

    private static WorkStep pressTest() {
        return afterWet(
                        WorkStep.of(
                                "press test",
                                Stage.SEWING,
                                "Fuse a scrap of the interfacing to a scrap of this cloth by its"
                                        + " leaflet, let it lie flat until it is cold, then bend"
                                        + " it, tear at a corner and wash it."),
                        "Cloth that is washed or dyed later no longer takes the glue as the test"
                                + " did.")
                .after("press", "A test on creased cloth tells nothing.")
                .after("buy", "The test is made with the very interfacing.")
                .waiting(COOLS)
                .minding(Hazard.IRON);
    }

    private static WorkStep fuse() {
        return afterWet(
                        WorkStep.of(
                                "fuse",
                                Stage.SEWING,
                                "Press the interfacing on, place by place: lift the iron, never"
                                        + " slide it."),
                        "Hot water after it loosens the glue, and cloth and interfacing shrink by"
                                + " different amounts: bubbles that no iron takes out.")
                .after("press test", "Glue does not come off: only a test shows whether it holds.")
                .after("cut", "Its pieces are pressed onto those of the cloth.")
                .waiting(COOLS)
                .checking(
                        "The test piece is cold and washed: it lies flat, does not peel, shows no"
                                + " glue and no change of colour.",
                        "The glue lies on the wrong side of the cloth, and pairs are mirrored.")
                .minding(Hazard.IRON);
    }

    private static WorkStep bind() {
        return WorkStep.of(
                        "bind",
                        Stage.SEWING,
                        "Cut and join the strips, bind a hand's length of scrap first, then the"
                                + " edges.")
                .after("cut", "The strips are cut from what the pieces leave.")
                .after("stay-stitch", "A curved edge stretches while it is bound.")
                .after("shoulders", "The strip runs on over this seam.")
                .after("side seams", "The strip runs on over this seam.")
                .checking("The edge is trimmed to its sewing line.")
                .minding(Hazard.BLADE);
    }

    /**
     * Single edges are bound as they are neatened: not before the fitting, and where the edge is
     * turned up, not before it is level. Common practice, no source.
     */
    private static WorkStep bindSeams(TrimResult result) {
        boolean isTurnedUp =
                result.bindings().stream()
                        .filter(TrimSteps::isSeam)
                        .flatMap(binding -> binding.edges().stream())
                        .anyMatch(edge -> result.turnedUp().contains(edge.edge()));
        WorkStep step =
                WorkStep.of(
                                "bind seams",
                                isTurnedUp ? Stage.HEMMING : Stage.SEWING,
                                isTurnedUp
                                        ? "Bind the raw edge that is turned up, once it is level and"
                                                + " trimmed even, the seams that run into it sewn."
                                        : "Bind each raw edge of a seam before another seam crosses"
                                                + " it.")
                        .after("cut", "The strips are cut from what the pieces leave.")
                        .after(
                                "fit on",
                                "An edge that is trimmed and bound leaves nothing to let out.")
                        .minding(Hazard.BLADE);
        return isTurnedUp
                ? step.after("level", "What is bound before it is level is cut off again.")
                        .after("assemble", "The strip runs on over the seams.")
                : step;
    }

    /** Common practice, no source. */
    private static WorkStep basteInterfacing() {
        return afterWet(
                        WorkStep.of(
                                "baste interfacing",
                                Stage.SEWING,
                                "Lay the interfacing on the wrong side of its pieces, smooth both"
                                        + " flat, and baste it on within the seam allowance; it is"
                                        + " caught in the seams, and trimmed close to them after."),
                        "Cloth and interfacing shrink by different amounts.")
                .after("cut", "Its pieces are basted onto those of the cloth.")
                .after("darts", "Darts are sewn in each layer by itself.")
                .minding(Hazard.NEEDLE);
    }

    private static WorkStep elastic() {
        return afterWet(
                        WorkStep.of(
                                "elastic",
                                Stage.SEWING,
                                "Sew the casing but for its opening, thread the elastic, pin its"
                                        + " ends and try the garment on; then cut, join and close."),
                        "Hot water and dye tire elastic and shrink its casing.")
                .after("side seams", "The casing runs on over this seam.")
                .after("assemble", "It is tried on the whole garment.")
                .checking(
                        "Pulled over what it must pass before it is cut, sitting and bending as"
                                + " well as standing.",
                        "The elastic lies untwisted all round.")
                .minding(Hazard.NEEDLE);
    }
}
