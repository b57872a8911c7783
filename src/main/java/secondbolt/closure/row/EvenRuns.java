package secondbolt.closure.row;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import secondbolt.closure.spacing.Spacing;
import secondbolt.closure.spacing.SpacingProblem;
import secondbolt.measure.Length;

/**
 * Takes the rounding of the grid out again: between two places that are fixed, gaps that differ by
 * a step at most are made equal.
 *
 * @param problem what was asked
 * @param spacing what was found
 */
record EvenRuns(SpacingProblem problem, Spacing spacing) {
    /**
     * The places.
     *
     * @param exact a place of the grid as a length
     */
    List<Length> lengths(IntFunction<Length> exact) {
        List<Integer> places = spacing.places();
        List<Length> lengths = new ArrayList<>();
        int from = 0;
        lengths.add(exact.apply(places.get(0)));
        for (int to = 1; to < places.size(); to++) {
            if (to == places.size() - 1 || problem.meets().contains(places.get(to))) {
                addRun(lengths, from, to, exact);
                from = to;
            }
        }
        return lengths;
    }

    private void addRun(List<Length> lengths, int from, int to, IntFunction<Length> exact) {
        List<Integer> places = spacing.places();
        Length start = exact.apply(places.get(from));
        Length run = exact.apply(places.get(to)).minus(start);
        boolean even = isEven(from, to);
        for (int i = from + 1; i <= to; i++) {
            Length equal = start.plus(run.times(i - (long) from).dividedBy(to - (long) from));
            lengths.add(even ? equal : exact.apply(places.get(i)));
        }
    }

    /** Whether the gaps differ by rounding alone, and equal ones meet nothing in the way. */
    private boolean isEven(int from, int to) {
        List<Integer> places = spacing.places();
        double equal = (double) (places.get(to) - places.get(from)) / (to - from);
        for (int i = from + 1; i <= to; i++) {
            if (Math.abs(places.get(i) - places.get(i - 1) - equal) >= 1) {
                return false;
            }
        }
        for (int i = from + 1; i < to; i++) {
            double place = places.get(from) + equal * (i - from);
            boolean isFree = !problem.isBlocked(i, places.get(i));
            boolean staysFree =
                    !problem.isBlocked(i, (int) Math.floor(place))
                            && !problem.isBlocked(i, (int) Math.ceil(place));
            if (isFree && !staysFree) {
                return false;
            }
        }
        return true;
    }
}
