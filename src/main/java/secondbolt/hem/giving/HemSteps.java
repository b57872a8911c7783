package secondbolt.hem.giving;

import java.util.List;
import java.util.stream.Collectors;
import secondbolt.hem.plan.Hem;
import secondbolt.hem.turned.HemEdge;
import secondbolt.hem.turned.HemResult;
import secondbolt.measure.Tape;
import secondbolt.task.Hazard;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;

/**
 * Turning hems up.
 *
 * @param tape to print with
 */
record HemSteps(Tape tape) {
    /** Those that come last. */
    WorkStep last(List<HemResult> hems) {
        String why =
                hems.stream()
                        .map(
                                hem ->
                                        hem.name()
                                                + HemTurn.whyLast(hem)
                                                        .map(w -> " (" + w + ")")
                                                        .orElse(""))
                        .collect(Collectors.joining(", "));
        WorkStep step =
                step("hem", hems, "")
                        .after("level", "What is turned up before it is level must be unpicked.")
                        .after("fit on", "The length is judged on what is tried on.")
                        .after(
                                "bind seams",
                                "A raw edge that is bound is bound before it is turned up.")
                        .after(
                                "assemble",
                                "A hem is turned up over its seams, which are sewn first: "
                                        + why
                                        + ".")
                        .after(
                                "gather",
                                "What is gathered or banded above pulls the edge up: " + why + ".")
                        .after("band", "A band decides from where the edge hangs: " + why + ".");
        return hems.stream().anyMatch(hem -> hem.level().isPresent() || hem.hang().first())
                ? step.checking(
                        "The marked fold is level all round, looked at from a distance.",
                        "The allowance is trimmed even, measured from the fold and not from the raw"
                                + " edge.")
                : step;
    }

    /**
     * Those that come before their cloth is gathered: what gathers it follows this step.
     *
     * @param name of the step
     */
    WorkStep flat(String name, List<HemResult> hems) {
        return step(
                        name,
                        hems,
                        " Before it is gathered: a straight edge is hemmed while the cloth lies"
                                + " flat, its widths joined and its sides hemmed (Text-Book on"
                                + " Domestic Art, of aprons).")
                .after("cut", "A hem is turned of what is cut.")
                .after("neaten", "A raw edge inside a hem turned once is neatened first.");
    }

    /**
     * Those of pieces that are sewn onto others whole: what sews them on follows this step. Common
     * practice, no source.
     */
    WorkStep sewnOn(List<HemResult> hems) {
        return step("hem flat pieces", hems, " Before its piece is sewn on.")
                .after("cut", "A hem is turned of what is cut.");
    }

    private WorkStep step(String name, List<HemResult> hems, String when) {
        return WorkStep.of(
                        name,
                        Stage.HEMMING,
                        "Turn up, press over the card, and sew. "
                                + hems.stream().map(this::one).collect(Collectors.joining("; "))
                                + "."
                                + when)
                .minding(Hazard.IRON, Hazard.NEEDLE);
    }

    private String one(HemResult hem) {
        return hem.name()
                + ": "
                + hem.hem().depth().map(depth -> tape.printBoth(depth) + ", ").orElse("")
                + (hem.hem().turned() == Hem.Turned.FACED
                        ? "faced"
                        : "turned " + words(hem.hem().turned()))
                + ", "
                + tape.print(hem.foldAllRound())
                + " altogether"
                + (hem.handled(HemEdge.Handling.EASE).isEmpty()
                        ? ""
                        : " (ease-stitch its raw edge before)");
    }

    private static String words(Hem.Turned turned) {
        return switch (turned) {
            case ONCE -> "once";
            case BLIND -> "once, stitched so that nothing shows outside";
            case TWICE -> "twice";
            case NARROW -> "twice, both turns narrow";
            case FACED -> "not at all";
        };
    }
}
