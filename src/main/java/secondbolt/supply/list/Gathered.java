package secondbolt.supply.list;

import java.util.List;
import java.util.stream.Stream;
import secondbolt.supply.plan.ItemName;
import secondbolt.supply.plan.Quantity;
import secondbolt.task.WorkStep;

/**
 * One thing of one measure, with all that is wanted of it so far.
 *
 * @param item what it is, as it was called first
 * @param each what one of what is counted is; empty for the thing itself
 * @param wanted how much, and by whom
 * @param why what for, each reason once
 * @param after the steps before which it should not be bought
 */
record Gathered(
        String item, String each, Wanted wanted, List<String> why, List<WorkStep.Follows> after) {
    /** Copies the lists. */
    Gathered {
        why = List.copyOf(why);
        after = List.copyOf(after);
    }

    static Gathered begun(String item, Quantity.Kind kind, String each) {
        return new Gathered(item, each, Wanted.none(kind), List.of(), List.of());
    }

    Quantity.Kind kind() {
        return wanted.workedOut().kind();
    }

    boolean isOf(ItemName name) {
        return ItemName.of(item).equals(name);
    }

    Gathered with(Wanted more) {
        return new Gathered(item, each, more, why, after);
    }

    Gathered because(String reason) {
        return reason.isBlank() ? this : new Gathered(item, each, wanted, also(why, reason), after);
    }

    Gathered notBefore(WorkStep.Follows step) {
        return new Gathered(item, each, wanted, why, also(after, step));
    }

    private static <T> List<T> also(List<T> all, T one) {
        return Stream.concat(all.stream(), Stream.of(one)).distinct().toList();
    }
}
