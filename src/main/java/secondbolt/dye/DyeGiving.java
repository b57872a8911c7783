package secondbolt.dye;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.guide.DyePrint;
import secondbolt.dye.plan.DyePlan.When;
import secondbolt.dye.recipe.Substance;
import secondbolt.task.Hazard;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Gives;
import secondbolt.worksheet.Term;

/** What dyeing contributes to the order of work and to what is bought. */
final class DyeGiving {
    private static final String STRIP = "test strip";
    private static final String DYE = "dye";

    private DyeGiving() {}

    static Gives of(List<DyeBatch> batches, DyePrint print) {
        List<DyeBatch> begun = batches.stream().filter(DyeBatch::mayBegin).toList();
        return new Gives(steps(begun), DyeNeeds.of(begun, print), words());
    }

    private static List<WorkStep> steps(List<DyeBatch> batches) {
        List<WorkStep> steps = new ArrayList<>();
        if (batches.isEmpty()) {
            return steps;
        }
        steps.add(strip());
        steps.add(dye(batches));
        if (batches.stream().anyMatch(AfterBath::isFixed)) {
            steps.add(AfterBath.fix());
        }
        steps.add(AfterBath.washOff(batches));
        steps.add(AfterBath.dry(batches));
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
                .minding(
                        Hazard.LEAFLET_FIRST,
                        Hazard.DYE_POWDER,
                        Hazard.ASTHMA_OR_PREGNANCY,
                        Hazard.CHILDREN_AND_PETS,
                        Hazard.HOT_BATH,
                        Hazard.COOKER,
                        Hazard.POISON_HELP);
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
        WorkStep step =
                prepared(
                                WorkStep.of(DYE, Stage.DYEING, bySheet(batches)),
                                "The dye is weighed for the dry cloth.")
                        .after(
                                STRIP,
                                "Only a dry, ironed strip shows the colour; the cloth cannot be undyed.")
                        .checking(
                                "The dry weight stands on the sheet, from the scale.",
                                "What the cloth is made of is known.",
                                "The test strip is dry and ironed, and the colour is right.",
                                "All dye of one colour is weighed, in one stock.")
                        .minding(hazards(batches))
                        .wet();
        return timed(step, batches);
    }

    /** A colour whose class or fibre is not known has no sheet yet. */
    private static String bySheet(List<DyeBatch> batches) {
        String told = colours(batches.stream().filter(DyePage::isFollowed).toList());
        String untold =
                batches.stream()
                        .filter(batch -> !DyePage.isFollowed(batch))
                        .map(batch -> batch.plan().name())
                        .distinct()
                        .collect(Collectors.joining(", "));
        return ((told.isEmpty() ? "" : "Dye by the dye sheet (" + told + "). ")
                        + (untold.isEmpty()
                                ? ""
                                : "No sheet yet for "
                                        + untold
                                        + ": fill what is open, or follow its kit."))
                .strip();
    }

    private static String colours(List<DyeBatch> batches) {
        return batches.stream()
                .map(batch -> batch.plan().name() + ": " + String.join(", ", batch.plan().names()))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private static Hazard[] hazards(List<DyeBatch> batches) {
        List<Hazard> hazards =
                new ArrayList<>(
                        List.of(
                                Hazard.DYE_POWDER,
                                Hazard.ASTHMA_OR_PREGNANCY,
                                Hazard.CHILDREN_AND_PETS,
                                Hazard.HOT_BATH,
                                Hazard.COOKER,
                                Hazard.HEAVY_BATH));
        if (uses(batches, Substance.SODA)) {
            hazards.add(Hazard.SODA_ASH);
        }
        if (uses(batches, Substance.VINEGAR) || uses(batches, Substance.ACID)) {
            hazards.add(Hazard.ACID);
        }
        if (batches.stream().anyMatch(b -> b.plan().bath().machine().isPresent())) {
            hazards.add(Hazard.ELECTRIC);
        }
        hazards.add(Hazard.WASTE);
        hazards.add(Hazard.POISON_HELP);
        return hazards.toArray(Hazard[]::new);
    }

    private static boolean uses(List<DyeBatch> batches, Substance what) {
        return batches.stream()
                .flatMap(batch -> batch.recipe().stream())
                .anyMatch(recipe -> recipe.has(what));
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
                            .after("neaten", "Raw edges fray in the bath.")
                            .after(
                                    "side seams",
                                    "The garment is dyed once it is sewn, as is written.");
        }
        return timed;
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
