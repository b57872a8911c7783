package secondbolt.closure.row;

import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import secondbolt.worksheet.Once;

/**
 * How a closure would come out with a few more or fewer fasteners. It takes longer than the closure
 * itself, so it is worked out when it is first shown.
 */
public final class OtherCounts {
    private final ClosureInput input;
    private final int taken;
    private final Once<List<OtherCount>> counts;

    /**
     * Puts the work off.
     *
     * @param input what all are worked out from
     * @param taken how many the closure has
     * @param work pure: the input and the count decide what comes out
     */
    OtherCounts(ClosureInput input, int taken, Supplier<List<OtherCount>> work) {
        this.input = input;
        this.taken = taken;
        this.counts = new Once<>(work);
    }

    /** The fewest first, the count taken among them; none for one fastener alone. */
    public List<OtherCount> list() {
        return counts.get();
    }

    /** Equal where the same would come out, whether it is worked out yet or not. */
    @Override
    public boolean equals(Object other) {
        return other instanceof OtherCounts counted
                && taken == counted.taken
                && input.equals(counted.input);
    }

    @Override
    public int hashCode() {
        return Objects.hash(input, taken);
    }
}
