package secondbolt.closure.spacing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Where a row can lie, looked up once.
 *
 * @param gaps how many it has, 1 or more
 * @param first where its first may be, none below a place that must be met
 * @param last where its last may be, likewise
 * @param least the narrowest gap
 * @param widest the widest gap, no wider than the longest row
 * @param meets places that may not be passed, rising
 * @param blocked for each fastener, where its hole must be worked by hand
 */
record Ground(
        int gaps,
        Places first,
        Places last,
        int least,
        int widest,
        int[] meets,
        List<Places> blocked) {
    static Ground of(SpacingProblem problem) {
        int from = problem.first().from();
        int to = problem.last().to();
        int[] meets = problem.meets().stream().mapToInt(meet -> meet).toArray();
        boolean isMet = meets.length > 0;
        int upTo = isMet ? Math.min(problem.first().to(), meets[0]) : problem.first().to();
        int downTo =
                isMet
                        ? Math.max(problem.last().from(), meets[meets.length - 1])
                        : problem.last().from();
        return new Ground(
                problem.count() - 1,
                Places.of(from, Math.min(upTo, to)),
                Places.of(Math.max(downTo, from), to),
                Math.min(problem.least(), Math.max(1, to - from + 1)),
                Math.min(problem.widest(), Math.max(1, to - from)),
                meets,
                problem.blocked().stream().map(zones -> Places.of(zones, from, to)).toList());
    }

    /** The same with nothing in the way. */
    Ground cleared() {
        List<Places> nothing = Collections.nCopies(gaps + 1, Places.NONE);
        return new Ground(gaps, first, last, least, widest, meets, nothing);
    }

    /** The same seen from the last one up. */
    Ground mirrored() {
        int[] other = new int[meets.length];
        for (int i = 0; i < meets.length; i++) {
            other[meets.length - 1 - i] = -meets[i];
        }
        List<Places> reversed = new ArrayList<>(blocked.stream().map(Places::mirrored).toList());
        Collections.reverse(reversed);
        return new Ground(gaps, last.mirrored(), first.mirrored(), least, widest, other, reversed);
    }

    /** Whether there is no place for an end. */
    boolean isNone() {
        return first.isEmpty() || last.isEmpty() || lastTo() <= firstFrom();
    }

    int firstFrom() {
        return first.from(0);
    }

    int firstTo() {
        return first.to(0);
    }

    int lastFrom() {
        return last.from(0);
    }

    int lastTo() {
        return last.to(0);
    }

    /** How many runs a set of places on it can have, about. */
    int pieces() {
        int most = blocked.stream().mapToInt(Places::runs).max().orElse(0);
        return 1 + meets.length + most;
    }
}
