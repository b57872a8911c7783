package secondbolt.dye;

import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.guide.HotSoak;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.recipe.RecipeLine;
import secondbolt.dye.recipe.Substance;
import secondbolt.task.Hazard;
import secondbolt.task.Stage;
import secondbolt.task.Wait;
import secondbolt.task.WorkStep;

/** The steps that follow the dye bath: fixed, washed off, dried. */
final class AfterBath {
    private static final String DYE = "dye";
    private static final String FIX = "fix dye";
    private static final String WASH_OFF = "wash off";
    private static final String DRY = "dry";

    private static final String DRY_HOURS =
            "4 to 24 h for a sheet on a line (common practice, no source)";

    private AfterBath() {}

    /** Whether a bath of fixative follows; not if her leaflet asks for none. */
    static boolean isFixed(DyeBatch batch) {
        boolean isWithout =
                batch.recipe()
                        .map(recipe -> recipe.of(Substance.FIXATIVE))
                        .filter(lines -> !lines.isEmpty())
                        .filter(lines -> lines.stream().allMatch(RecipeLine::isNothing))
                        .isPresent();
        return batch.isOf(DyeClass.DIRECT) && !isWithout;
    }

    static WorkStep fix() {
        return WorkStep.of(
                        FIX,
                        Stage.DYEING,
                        "Rinse direct dye cool, then fix it in a bath of its own, warm, by the"
                                + " fixative's label.")
                .after(DYE, "In the dye bath a fixative curdles the dye.")
                .wet();
    }

    static WorkStep washOff(List<DyeBatch> batches) {
        List<DyeBatch> hot = batches.stream().filter(AfterBath::isWashedHot).toList();
        boolean isReactive = !hot.isEmpty();
        boolean isOther = hot.size() < batches.size();
        String text =
                (isReactive ? soak(hot) : "")
                        + (isOther
                                ? (isReactive
                                                ? "Other colours: rinse, then wash"
                                                : "Rinse, then wash")
                                        + " gently, cool, apart from anything else."
                                : "");
        WorkStep step =
                WorkStep.of(WASH_OFF, Stage.DYEING, text.strip())
                        .after(DYE, "What is not held comes out in the first wash.")
                        .after(FIX, "What the fixative has not met is washed out with the rest.")
                        .wet();
        return isReactive ? step.minding(Hazard.HOT_BATH, Hazard.ELECTRIC) : step;
    }

    /** Silk and wool bear no hot wash, whatever dye they had. */
    private static boolean isWashedHot(DyeBatch batch) {
        return batch.isOf(DyeClass.REACTIVE)
                && batch.uptakes().stream()
                        .noneMatch(uptake -> uptake.fibre().hasAny(kind -> kind.isProtein()));
    }

    private static String soak(List<DyeBatch> hot) {
        String limits =
                hot.stream()
                        .map(HotSoak::of)
                        .filter(soak -> !soak.isBorne())
                        .map(HotSoak::words)
                        .collect(Collectors.joining("; "));
        return "Reactive dye: rinse cool, then soak at 60 °C (140 °F) or hotter"
                + (limits.isEmpty() ? "" : ", but no hotter than the cloth bears (" + limits + "),")
                + " with a little neutral detergent until a damp piece ironed dry between white"
                + " cotton leaves no mark. ";
    }

    static WorkStep dry(List<DyeBatch> batches) {
        boolean isTender =
                batches.stream()
                        .flatMap(batch -> batch.uptakes().stream())
                        .anyMatch(uptake -> uptake.fibre().hasAny(kind -> kind.isProtein()));
        return WorkStep.of(
                        DRY,
                        Stage.DYEING,
                        isTender
                                ? "Press it in a towel, dry wool and silk flat and out of the sun,"
                                        + " without heat."
                                : "Dry it flat or on a line, out of the sun.")
                .after(WASH_OFF, "Loose dye marks what it dries against.")
                .after(DYE, "Loose dye marks what it dries against.")
                .waiting(
                        new Wait("it dries", Duration.ofHours(4), Duration.ofHours(24), DRY_HOURS));
    }
}
