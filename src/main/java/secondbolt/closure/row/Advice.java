package secondbolt.closure.row;

import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import secondbolt.worksheet.Once;

/**
 * What would help where something is not met, and how a closure would come out with a few more or
 * fewer fasteners. It takes longer than the closure itself, so it is worked out when it is first
 * shown.
 */
public final class Advice {
    private final ClosureInput input;
    private final int taken;
    private final Once<List<String>> remedies;
    private final Once<List<OtherCount>> counts;

    /**
     * Puts the work off.
     *
     * @param input what all is worked out from
     * @param taken how many fasteners the closure has
     * @param remedies pure: the input and the count decide what comes out
     * @param counts likewise
     */
    Advice(
            ClosureInput input,
            int taken,
            Supplier<List<String>> remedies,
            Supplier<List<OtherCount>> counts) {
        this.input = input;
        this.taken = taken;
        this.remedies = new Once<>(remedies);
        this.counts = new Once<>(counts);
    }

    /** What would meet all that is asked, where something is not met. */
    public List<String> remedies() {
        return remedies.get();
    }

    /** Other counts, the fewest first, the one taken among them; none for one fastener alone. */
    public List<OtherCount> counts() {
        return counts.get();
    }

    /** Equal where the same would come out, whether it is worked out yet or not. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Advice advice
                && taken == advice.taken
                && input.equals(advice.input);
    }

    @Override
    public int hashCode() {
        return Objects.hash(input, taken);
    }
}
