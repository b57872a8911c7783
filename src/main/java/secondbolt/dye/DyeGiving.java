package secondbolt.dye;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.guide.DyePrint;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.plan.DyePlan.When;
import secondbolt.task.Hazard;
import secondbolt.task.Stage;
import secondbolt.task.Wait;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Gives;
import secondbolt.worksheet.Term;

/** What dyeing contributes to the order of work and to what is bought. */
final class DyeGiving {
    private static final String STRIP = "test strip";
    private static final String DYE = "dye";
    private static final String FIX = "fix dye";
    private static final String WASH_OFF = "wash off";
    private static final String DRY = "dry";

    private static final String DRY_HOURS =
            "4 to 24 h for a sheet on a line (common practice, no source)";

    private DyeGiving() {}

    static Gives of(List<DyeBatch> batches, DyePrint print) {
        List<DyeBatch> begun = batches.stream().filter(DyeBatch::mayBegin).toList();
        return new Gives(steps(begun), DyeNeeds.of(begun, print), words());
    }

    private static List<WorkStep> steps(List<DyeBatch> batches) {
        if (batches.isEmpty()) {
            return List.of();
        }
        List<WorkStep> steps = new ArrayList<>();
        steps.add(strip());
        steps.add(dye(batches));
        boolean isDirect = batches.stream().anyMatch(batch -> batch.isOf(DyeClass.DIRECT));
        if (isDirect) {
            steps.add(fix());
        }
        steps.add(washOff(batches));
        steps.add(dry(batches));
        return steps;
    }

    private static WorkStep strip() {
        String why = "Once it is dyed there is no way back to its dry weight and its look.";
        return prepared(
                        WorkStep.of(
                                STRIP,
                                Stage.DYEING,
                                "Dye a hem or seam offcut of each cloth through the whole recipe,"
                                        + " rinse, dry and iron it, and judge it by daylight."),
                        why)
                .minding(Hazard.DYE_POWDER, Hazard.HOT_BATH);
    }

    /** All that must be done to the cloth before any dye touches it. */
    private static WorkStep prepared(WorkStep step, String weighing) {
        return step.after("weigh", weighing)
                .after("unpick", "Old seams and hems hide undyed cloth, which shows when let out.")
                .after("dry mildew", "Spores spread in a warm bath.")
                .after(
                        "mark square",
                        "A square marked after the bath shows only part of the shrinkage.")
                .after("prewash", "Dirt, starch and softener keep dye off in patches.")
                .after("prewash again", "Dirt, starch and softener keep dye off in patches.")
                .after(
                        "rinse bleach",
                        "Bleach left in the cloth destroys the dye and makes patches.")
                .after(
                        "remove colour",
                        "Remover left in the cloth takes the new colour away again.");
    }

    private static WorkStep dye(List<DyeBatch> batches) {
        String colours =
                batches.stream()
                        .map(
                                batch ->
                                        batch.plan().name()
                                                + ": "
                                                + String.join(", ", batch.plan().names()))
                        .distinct()
                        .collect(Collectors.joining("; "));
        WorkStep step =
                prepared(
                                WorkStep.of(
                                        DYE,
                                        Stage.DYEING,
                                        "Dye by the dye sheet (" + colours + ")."),
                                "The dye is weighed for the dry cloth.")
                        .after(
                                STRIP,
                                "Only a dry, ironed strip shows the colour; the cloth cannot be undyed.")
                        .checking(
                                "The dry weight stands on the sheet, from the scale.",
                                "What the cloth is made of is known.",
                                "The test strip is dry and ironed, and the colour is right.",
                                "All dye of one colour is weighed, in one stock.")
                        .minding(
                                Hazard.DYE_POWDER,
                                Hazard.HOT_BATH,
                                Hazard.HEAVY_BATH,
                                Hazard.CHILDREN_AND_PETS)
                        .wet();
        return timed(step, batches);
    }

    private static WorkStep timed(WorkStep step, List<DyeBatch> batches) {
        WorkStep timed = step;
        if (batches.stream().anyMatch(batch -> batch.plan().whenOrBefore() == When.AFTER_CUTTING)) {
            timed =
                    timed.after("cut", "The pieces are dyed once they are cut, as is written.")
                            .after("neaten", "Raw edges fray in the bath.");
        }
        if (batches.stream().anyMatch(batch -> batch.plan().whenOrBefore() == When.AFTER_SEWING)) {
            timed =
                    timed.after("assemble", "The garment is dyed once it is sewn, as is written.")
                            .after(
                                    "side seams",
                                    "The garment is dyed once it is sewn, as is written.");
        }
        return timed;
    }

    private static WorkStep fix() {
        return WorkStep.of(
                        FIX,
                        Stage.DYEING,
                        "Rinse direct dye cool, then fix it in a bath of its own, warm, by the"
                                + " fixative's label.")
                .after(DYE, "In the dye bath a fixative curdles the dye.")
                .wet();
    }

    private static WorkStep washOff(List<DyeBatch> batches) {
        boolean isReactive = batches.stream().anyMatch(batch -> batch.isOf(DyeClass.REACTIVE));
        boolean isOther = batches.stream().anyMatch(batch -> !batch.isOf(DyeClass.REACTIVE));
        String text =
                (isReactive
                                ? "Reactive dye: rinse cool, then soak at 60 °C (140 °F) or hotter with a"
                                        + " little neutral detergent until a damp piece ironed dry"
                                        + " between white cotton leaves no mark. "
                                : "")
                        + (isOther
                                ? "Other dyes: wash gently, cool, apart from anything else."
                                : "");
        WorkStep step =
                WorkStep.of(WASH_OFF, Stage.DYEING, text.strip())
                        .after(DYE, "What is not held comes out in the first wash.")
                        .after(FIX, "What the fixative has not met is washed out with the rest.")
                        .wet();
        return isReactive ? step.minding(Hazard.HOT_BATH, Hazard.ELECTRIC) : step;
    }

    private static WorkStep dry(List<DyeBatch> batches) {
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

    private static List<Term> words() {
        return List.of(
                new Term("liquor ratio", "How many times the dry cloth's weight the dye bath has."),
                new Term("stock", "All the dye of one colour, weighed and dissolved at once."),
                new Term(
                        "fixative",
                        "What holds direct dye in the cloth; it follows in a bath of its own."),
                new Term(
                        "washing off",
                        "Washing out the dye that the fibre has not taken, so that it marks nothing."));
    }
}
