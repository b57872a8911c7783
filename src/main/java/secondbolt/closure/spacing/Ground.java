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
        List<Integer> meets,
        List<Places> blocked) {
    static Ground of(SpacingProblem problem) {
        int from = problem.first().from();
        int to = problem.last().to();
        List<Integer> meets = problem.meets();
        boolean isMet = !meets.isEmpty();
        int upTo = isMet ? Math.min(problem.first().to(), meets.get(0)) : problem.first().to();
        int downTo =
                isMet
                        ? Math.max(problem.last().from(), meets.get(meets.size() - 1))
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
        List<Integer> other = new ArrayList<>(meets.stream().map(meet -> -meet).toList());
        Collections.reverse(other);
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
}
