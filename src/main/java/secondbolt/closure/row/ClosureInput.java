package secondbolt.closure.row;

import secondbolt.closure.fastening.FastenerSpread;
import secondbolt.closure.fastening.Machine;
import secondbolt.closure.placket.Closure;
import secondbolt.closure.placket.PlacketPlan;
import secondbolt.measure.Tape;

/**
 * All that a closure is worked out from.
 *
 * @param name the maker's name for it
 * @param closure as written
 * @param plan its placket and what lies on it
 * @param machine the maker's
 * @param tape the maker's
 */
public record ClosureInput(
        String name, Closure closure, PlacketPlan plan, Machine machine, Tape tape) {
    /** The same with the fasteners spread otherwise. */
    ClosureInput with(FastenerSpread spread) {
        return new ClosureInput(name, closure.with(spread), plan, machine, tape);
    }
}
