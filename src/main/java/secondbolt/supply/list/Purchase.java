package secondbolt.supply.list;

import java.util.List;
import java.util.Optional;
import secondbolt.file.value.Placed;
import secondbolt.measure.Tape;
import secondbolt.supply.plan.Quantity;
import secondbolt.supply.plan.Supply;
import secondbolt.task.WorkStep;

/**
 * One thing on the shopping list.
 *
 * @param item what it is, as the topic or the maker calls it
 * @param each what one of what is counted is, such as "spool of 100 m"; empty for the thing itself
 * @param wanted how much, and by whom
 * @param why what for, each reason once
 * @param after the steps before which it should not be bought, with the reasons
 * @param supply what the maker tells of it, if she does
 * @param toBuy what is missing, rounded up as it is sold; in whole packs if it is sold in packs
 */
public record Purchase(
        String item,
        String each,
        Wanted wanted,
        List<String> why,
        List<WorkStep.Follows> after,
        Optional<Supply> supply,
        Quantity toBuy) {
    /** Copies the lists. */
    public Purchase {
        why = List.copyOf(why);
        after = List.copyOf(after);
    }

    static Purchase of(Gathered gathered, Optional<Supply> supply, Tape tape) {
        Quantity wanted = gathered.wanted().most();
        Quantity have =
                supply.flatMap(Supply::have)
                        .map(Placed::value)
                        .orElse(Quantity.none(wanted.kind()));
        Quantity missing = wanted.missing(have);
        Quantity toBuy =
                supply.flatMap(Supply::pack)
                        .map(pack -> pack.value().times(missing.in(pack.value())))
                        .orElseGet(() -> Rounding.up(missing, tape));
        return new Purchase(
                gathered.item(),
                gathered.each(),
                gathered.wanted(),
                gathered.why(),
                gathered.after(),
                supply,
                toBuy);
    }

    /** What is in the house, if that is told. */
    public Optional<Quantity> have() {
        return supply.flatMap(Supply::have).map(Placed::value);
    }

    /** How many packs are bought; nothing if it is not sold in packs. */
    public Optional<Integer> packs() {
        return supply.flatMap(Supply::pack).map(pack -> toBuy.in(pack.value()));
    }

    /** Whether all of it is in the house. */
    public boolean isThere() {
        return !toBuy.isPositive();
    }

    /** Whether it can be bought at any time. */
    public boolean isNow() {
        return after.isEmpty();
    }
}
