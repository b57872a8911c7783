package secondbolt.task;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Something to do.
 *
 * @param name a word or two, its own in the project, by which others follow it and the maker ticks
 *     it
 * @param stage of the work it belongs to
 * @param text what to do, in a sentence or two
 * @param follows the steps that must be done before, each with the reason; one that no topic
 *     contributes is not waited for
 * @param pause what must pass after it before anything that follows it, if anything must
 * @param checks what to look at just before it, because it cannot be undone
 * @param hazards where it can hurt
 * @param isWet whether the cloth gets wet through, so that its flaws must be looked over again
 * @param isDone whether the project file says elsewhere that it is done, as of pieces that are cut
 */
public record WorkStep(
        String name,
        Stage stage,
        String text,
        List<Follows> follows,
        Optional<Wait> pause,
        List<String> checks,
        Set<Hazard> hazards,
        boolean isWet,
        boolean isDone) {
    /** Copies the lists. */
    public WorkStep {
        follows = List.copyOf(follows);
        checks = List.copyOf(checks);
        hazards = Set.copyOf(hazards);
    }

    /** One that follows nothing and waits for nothing. */
    public static WorkStep of(String name, Stage stage, String text) {
        return new WorkStep(
                name, stage, text, List.of(), Optional.empty(), List.of(), Set.of(), false, false);
    }

    /**
     * The same, which follows another.
     *
     * @param step its name
     * @param why what goes wrong otherwise, as a sentence that a maker is told who does it the
     *     other way round
     */
    public WorkStep after(String step, String why) {
        List<Follows> more = new ArrayList<>(follows);
        more.add(new Follows(step, why));
        return following(more);
    }

    /** The same, which follows these instead of what it followed. */
    public WorkStep following(List<Follows> others) {
        return new WorkStep(name, stage, text, others, pause, checks, hazards, isWet, isDone);
    }

    /** The same with what must pass after it. */
    public WorkStep waiting(Wait after) {
        return new WorkStep(
                name, stage, text, follows, Optional.of(after), checks, hazards, isWet, isDone);
    }

    /** The same with what to look at just before it. */
    public WorkStep checking(String... before) {
        return new WorkStep(
                name, stage, text, follows, pause, List.of(before), hazards, isWet, isDone);
    }

    /** The same with where it can hurt. */
    public WorkStep minding(Hazard... where) {
        return new WorkStep(
                name, stage, text, follows, pause, checks, Set.of(where), isWet, isDone);
    }

    /** The same, in which the cloth gets wet through. */
    public WorkStep wet() {
        return new WorkStep(name, stage, text, follows, pause, checks, hazards, true, isDone);
    }

    /** The same, done already. */
    public WorkStep done() {
        return new WorkStep(name, stage, text, follows, pause, checks, hazards, isWet, true);
    }

    /**
     * What a step follows.
     *
     * @param step the name of the other
     * @param why what goes wrong otherwise, in a sentence
     */
    public record Follows(String step, String why) {}
}
