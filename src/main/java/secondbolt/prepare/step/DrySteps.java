package secondbolt.prepare.step;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.prepare.due.Preparation;
import secondbolt.prepare.due.PreparedCloth;
import secondbolt.task.Hazard;
import secondbolt.task.Wait;
import secondbolt.task.WorkStep;
import secondbolt.textile.state.CameWith;
import secondbolt.worksheet.Convention;

/**
 * What is done before the cloth gets wet.
 *
 * @param all the cloths
 * @param tape to print with
 */
record DrySteps(Preparation all, Tape tape) {
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
    static final Wait DRIED =
            new Wait(
                    "it dries",
                    Duration.ofHours(4),
                    Duration.ofHours(24),
                    "a sheet on a line, common practice, no source; longer in damp air and for"
                            + " heavy cloth");
    static final String SPREADS = "What lives in the cloth spreads as it is handled.";

    /** All of them, in order. */
    List<WorkStep> steps() {
        List<WorkStep> steps = new ArrayList<>();
        freeze().ifPresent(steps::add);
        dryMildew().ifPresent(steps::add);
        air().ifPresent(steps::add);
        unpick().ifPresent(steps::add);
        weigh().ifPresent(steps::add);
        markSquare().ifPresent(steps::add);
        return steps;
    }

    private Optional<WorkStep> step(String name, Predicate<PreparedCloth> like, String text) {
        return new ClothStep(all).of(name, like, text);
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
}
