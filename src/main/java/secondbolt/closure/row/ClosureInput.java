package secondbolt.closure.row;

import secondbolt.closure.fastening.FastenerSpread;
import secondbolt.closure.fastening.Machine;
import secondbolt.closure.placket.Closure;
import secondbolt.closure.placket.PlacketPlan;
import secondbolt.closure.spacing.Steps;
import secondbolt.measure.Tape;

/**
 * All that a closure is worked out from.
 *
 * @param name the maker's name for it
 * @param closure as written
 * @param plan its placket and what lies on it
 * @param machine the maker's
 * @param tape the maker's
 * @param mostSteps how many steps its rows may be looked for in, and as many what would help it
 */
public record ClosureInput(
        String name,
        Closure closure,
        PlacketPlan plan,
        Machine machine,
        Tape tape,
        long mostSteps) {
    /** About a second's; the longest row between fixed ends needs a tenth of it. */
    private static final long MOST_STEPS = 400_000_000;

    /** A plain row between ends that may move takes a tenth of it. */
    private static final long LEAST_STEPS = 2_000_000;

    /** One among so many closures of a file, which share what all of them together may take. */
    ClosureInput among(int closures) {
        long share = Math.max(LEAST_STEPS, 5 * MOST_STEPS / Math.max(1, closures));
        return new ClosureInput(name, closure, plan, machine, tape, Math.min(mostSteps, share));
    }

    /** One alone. */
    public ClosureInput(
            String name, Closure closure, PlacketPlan plan, Machine machine, Tape tape) {
        this(name, closure, plan, machine, tape, MOST_STEPS);
    }

    /** The steps its rows may be looked for in. */
    Steps steps() {
        return new Steps(mostSteps);
    }

    /** The same with the fasteners spread otherwise. */
    ClosureInput with(FastenerSpread spread) {
        return new ClosureInput(name, closure.with(spread), plan, machine, tape, mostSteps);
    }
}
