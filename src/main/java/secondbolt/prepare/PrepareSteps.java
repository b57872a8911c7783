package secondbolt.prepare;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.task.Hazard;
import secondbolt.task.Stage;
import secondbolt.task.Wait;
import secondbolt.task.WorkStep;
import secondbolt.textile.Textile;
import secondbolt.textile.fibre.FibreKind;
import secondbolt.textile.state.CameWith;
import secondbolt.textile.state.Finish;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Sentence;

/**
 * The steps of preparing, each for the cloths that need it.
 *
 * <p>The order is derived: what spreads is dealt with before the cloth comes in, what has no way
 * back is measured before it, and what changes the size comes before the size is measured.
 *
 * @param all the cloths
 * @param tape to print with
 */
record PrepareSteps(Preparation all, Tape tape) {
    private static final Convention SQUARE =
            new Convention(
                    Length.ofInches(20, 1),
                    Length.ofMillimetres(500),
                    "ISO 3759, specimens at least 50 cm by 50 cm");
    private static final Convention FROM_EDGES =
            new Convention(
                    Length.ofInches(2, 1),
                    Length.ofMillimetres(50),
                    "ISO 3759, at least 5 cm from the edges");
    private static final Wait FROZEN =
            new Wait(
                    "it stays frozen",
                    Duration.ofDays(7),
                    Duration.ofDays(14),
                    "7 days at −20 °C (−4 °F) or colder (The Textile Museum, Washington, pest"
                            + " brochure); 14 in a household freezer that is no colder than −18 °C"
                            + " (0 °F), from memory");
    private static final Wait DRIED =
            new Wait(
                    "it dries",
                    Duration.ofHours(4),
                    Duration.ofHours(24),
                    "a sheet on a line, common practice, no source; longer in damp air and for"
                            + " heavy cloth");
    private static final Wait FLAT =
            Wait.hours("it lies flat", 4, "before cloth is measured: AATCC 135");
    private static final String STARCH_OUT =
            "Starch is out when the rinse is clear and the cloth no longer slippery.";
    private static final String WOOL =
            "Wool lies 30 minutes in still, hand-warm water, is not rubbed, and dries flat.";
    private static final String TENDER_WET =
            "Viscose and its like tear easily while they are wet: do not wring them.";
    private static final String KNIT = "A knit dries flat.";
    private static final String PILE = "A pile is steamed from the back and never pressed flat.";
    private static final String GROWS =
            "A wash draws up the seams, and holes, webs and stains grow in it.";
    private static final String SPREADS = "What lives in the cloth spreads as it is handled.";

    /** What is due, each with the cloths it is due for, in order; a press always is. */
    static List<String> due(Preparation all) {
        List<String> due = new ArrayList<>();
        add(due, all, "freeze ", c -> c.has(CameWith.MOTHS));
        add(due, all, "dry and brush ", c -> c.has(CameWith.MILDEW));
        add(due, all, "air ", c -> c.has(CameWith.CAMPHOR));
        add(due, all, "unpick ", c -> c.has(CameWith.OLD_SEAMS));
        add(due, all, "weigh ", c -> c.isWetDue() && c.isWeighingDue());
        add(due, all, "wash ", PreparedCloth::isWashDue);
        add(due, all, "wash once more ", PreparedCloth::isWashDueAgain);
        return due;
    }

    private static void add(
            List<String> due, Preparation all, String what, Predicate<PreparedCloth> like) {
        if (all.hasAny(like)) {
            due.add(what + all.names(like));
        }
    }

    /** All of them, in order; the survey is done already where nothing calls for another. */
    List<WorkStep> steps() {
        List<WorkStep> steps = new ArrayList<>();
        freeze().ifPresent(steps::add);
        dryMildew().ifPresent(steps::add);
        air().ifPresent(steps::add);
        unpick().ifPresent(steps::add);
        weigh().ifPresent(steps::add);
        markSquare().ifPresent(steps::add);
        prewash().ifPresent(steps::add);
        prewashAgain().ifPresent(steps::add);
        press().ifPresent(steps::add);
        steps.add(survey());
        return steps;
    }

    private Optional<WorkStep> step(String name, Predicate<PreparedCloth> like, String text) {
        return all.hasAny(like)
                ? Optional.of(
                        WorkStep.of(
                                name,
                                Stage.PREPARING,
                                Sentence.capital(all.names(like)) + ": " + text))
                : Optional.empty();
    }

    private Optional<WorkStep> freeze() {
        return step(
                        "freeze",
                        c -> c.has(CameWith.MOTHS),
                        "seal it in clear bags of polyethylene, the air pressed out, and freeze it;"
                                + " do not open the freezer meanwhile. Thaw it closed, then brush or"
                                + " vacuum it outdoors.")
                .map(step -> step.waiting(FROZEN));
    }

    private Optional<WorkStep> dryMildew() {
        return step(
                        "dry mildew",
                        c -> c.has(CameWith.MILDEW),
                        "dry it outdoors, brush the spots off with the wind from behind you, and"
                                + " pull at each with both hands.")
                .map(step -> step.waiting(DRIED).minding(Hazard.MILDEW_SPORES));
    }

    private Optional<WorkStep> air() {
        return step(
                "air",
                c -> c.has(CameWith.CAMPHOR),
                "hang it outdoors in the shade until it smells of nothing.");
    }

    private Optional<WorkStep> unpick() {
        return step(
                        "unpick",
                        c -> c.has(CameWith.OLD_SEAMS),
                        "unpick all seams and hems, brush out the lint, mend, and mark stains and"
                                + " holes with thread. Look along each seam for needle holes and for"
                                + " a line of another colour.")
                .map(
                        step ->
                                step.after("freeze", SPREADS)
                                        .after("dry mildew", SPREADS)
                                        .minding(Hazard.BLADE));
    }

    private Optional<WorkStep> weigh() {
        return step(
                        "weigh",
                        PreparedCloth::isWeighingDue,
                        "weigh it dry, in a bag if it is large, and write its mass.")
                .map(
                        step ->
                                step.after("freeze", SPREADS)
                                        .after("dry mildew", "Damp cloth weighs more.")
                                        .after("unpick", "What is unpicked weighs too."));
    }

    private Optional<WorkStep> markSquare() {
        return step(
                        "mark square",
                        PreparedCloth::isSquareDue,
                        "mark a square of "
                                + tape.print(SQUARE.on(tape))
                                + " with thread, along the threads, at least "
                                + tape.print(FROM_EDGES.on(tape))
                                + " from every edge and a tenth of the width from its selvages"
                                + " (ISO 3759; AATCC 135). Write what it measures.")
                .map(step -> step.after("unpick", "Seams hold the cloth, and the square with it."));
    }

    private Optional<WorkStep> prewash() {
        Predicate<PreparedCloth> due = PreparedCloth::isWashDue;
        return step("prewash", due, washed(due))
                .map(
                        step ->
                                step.after("freeze", SPREADS)
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
                                        .waiting(DRIED)
                                        .wet());
    }

    private Optional<WorkStep> prewashAgain() {
        Predicate<PreparedCloth> due = PreparedCloth::isWashDueAgain;
        return step("prewash again", due, washed(due) + " Then measure the square once more.")
                .map(
                        step ->
                                step.after("prewash", "It is the wash after the first.")
                                        .minding(Hazard.ELECTRIC)
                                        .waiting(DRIED)
                                        .wet());
    }

    private String washed(Predicate<PreparedCloth> like) {
        List<PreparedCloth> those = all.those(like);
        return "wash and dry it as the garment will be, at most "
                + heats(those, Evidence::wash)
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

    /** Each heat once, with the cloths it holds for where there are others. */
    private String heats(List<PreparedCloth> those, Function<PreparedCloth, String> heat) {
        Map<String, List<String>> names = new LinkedHashMap<>();
        those.forEach(
                c -> names.computeIfAbsent(heat.apply(c), h -> new ArrayList<>()).add(c.name()));
        return names.entrySet().stream()
                .map(
                        e ->
                                all.cloths().size() == 1
                                        ? e.getKey()
                                        : e.getKey() + " for " + String.join(", ", e.getValue()))
                .collect(Collectors.joining("; "));
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
                                                + heats(those, Evidence::iron)
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
