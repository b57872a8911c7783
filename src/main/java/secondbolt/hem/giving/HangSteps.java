package secondbolt.hem.giving;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.hem.plan.Garment;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.turned.HemLevel;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Plural;
import secondbolt.measure.Tape;
import secondbolt.task.Hazard;
import secondbolt.task.Stage;
import secondbolt.task.Wait;
import secondbolt.task.WorkStep;

/** Hanging and levelling, before any of these hems is turned up. */
final class HangSteps {
    private static final String BAND =
            "It hangs from its finished waist, as it is worn; sewn on later, a band moves the edge"
                    + " again.";

    private HangSteps() {}

    /** Letting them hang, all at once; nothing if none does. */
    static Optional<WorkStep> hang(List<HemResult> hanging) {
        if (hanging.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                WorkStep.of(
                                "hang",
                                Stage.HEMMING,
                                "Hang it up by its waist or shoulders, closed as it is worn, its hem"
                                        + " free all round: "
                                        + HemGiving.names(hanging)
                                        + ". Some weight pinned along the edge brings the drop out"
                                        + " (The New Dressmaker, 1921).")
                        .after(
                                "assemble",
                                "Cloth on the bias drops as it hangs sewn together; single panels"
                                        + " drop otherwise.")
                        .after("band", BAND)
                        .waiting(wait(hanging)));
    }

    /** Of several the longest. */
    private static Wait wait(List<HemResult> hanging) {
        List<Hem.Hang> hangs = hanging.stream().map(HemResult::hang).toList();
        int least = hangs.stream().mapToInt(Hem.Hang::hours).max().orElse(0);
        int most = hangs.stream().mapToInt(Hem.Hang::mostHours).max().orElse(0);
        return new Wait(
                "it hangs",
                Duration.ofHours(least),
                Duration.ofHours(most),
                hanging.stream().map(HangSteps::why).distinct().collect(Collectors.joining(" ")));
    }

    private static String why(HemResult hem) {
        Hem.Hang hang = hem.hang();
        if (hang.hours() == hang.mostHours()) {
            return "So long you let " + hem.name() + " hang.";
        }
        return "A day at least (a machine maker's how-to), two or three days for a circular skirt"
                + " (The New Dressmaker, 1921). "
                + (hang.equals(Hem.Hang.HEAVY)
                        ? "The cloth is heavy: wait the longer time."
                        : "Firm cloth: a day. Soft or heavy cloth: the longer time; in doubt, too.");
    }

    /** Levelling them; nothing if none is levelled. */
    static Optional<WorkStep> level(List<HemResult> levelled, Tape tape) {
        if (levelled.isEmpty()) {
            return Optional.empty();
        }
        boolean isHungUp = levelled.stream().allMatch(HangSteps::isHungUp);
        WorkStep step =
                WorkStep.of(
                                "level",
                                Stage.HEMMING,
                                isHungUp ? atTheRail() : onTheWearer(tape, levelled))
                        .after(
                                "hang",
                                "An edge that was levelled before it had dropped hangs down at the"
                                        + " bias afterwards.")
                        .after("assemble", "An edge is levelled all round, over its seams.")
                        .after("band", BAND)
                        .after(
                                "fit on",
                                "What is taken in or let out at the waist or the sides moves the"
                                        + " edge.")
                        .minding(Hazard.NEEDLE);
        return Optional.of(
                isHungUp
                        ? step
                        : step.checking(
                                levelled.stream().anyMatch(hem -> hem.hang().first())
                                        ? "It has hung long enough: measure a side and a seam; by the"
                                                + " next day neither is longer."
                                        : "It has been pressed, and hangs from its finished waist or"
                                                + " shoulders.",
                                "The shoes and the underwear are on that it is worn with."));
    }

    private static boolean isHungUp(HemResult hem) {
        return hem.hem().garment().filter(Garment.CURTAIN::equals).isPresent();
    }

    private static String atTheRail() {
        return "Hang it at its own rail by all its hooks, and mark the fold level from the floor.";
    }

    private static String onTheWearer(Tape tape, List<HemResult> levelled) {
        return "On the wearer, who stands straight and still while you go round: mark the fold level"
                + " from the floor. "
                + levelled.stream()
                        .map(hem -> hem.name() + floor(hem, tape))
                        .collect(Collectors.joining("; "))
                + ". Look at it from a distance before anything is trimmed.";
    }

    private static String floor(HemResult hem, Tape tape) {
        return hem.level()
                .map(
                        (HemLevel level) ->
                                ": the fold "
                                        + tape.printBoth(level.fold())
                                        + " above the floor, "
                                        + Plural.of(level.marks(), "mark")
                                        + " all round")
                .orElse(": how high above the floor is not told");
    }
}
