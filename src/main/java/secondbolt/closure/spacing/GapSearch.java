package secondbolt.closure.spacing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Searches the gaps of a row of fasteners between two fixed ends. Differences from the mean gap are
 * counted in steps times the number of gaps, so that they are whole numbers.
 */
final class GapSearch {
    private static final long NEVER = Long.MAX_VALUE / 4;

    private final SpacingProblem problem;
    private final BlockedPlaces blocked;
    private final int byHand;
    private final int first;
    private final int last;
    private final int gaps;
    private final int span;
    private final long difference;

    /** For each place from the first on, the nearest place before it that may not be passed. */
    private final int[] backTo;

    GapSearch(SpacingProblem problem, BlockedPlaces blocked, int byHand, int first, int last) {
        this(problem, blocked, byHand, first, last, 0);
    }

    private GapSearch(
            SpacingProblem problem,
            BlockedPlaces blocked,
            int byHand,
            int first,
            int last,
            long difference) {
        this.problem = problem;
        this.blocked = blocked;
        this.byHand = byHand;
        this.first = first;
        this.last = last;
        this.gaps = problem.count() - 1;
        this.span = last - first;
        this.difference = difference;
        this.backTo = backTo();
    }

    private int[] backTo() {
        int[] nearest = new int[span + 1];
        int anchor = 0;
        for (int x = 1; x <= span; x++) {
            nearest[x] = anchor;
            if (problem.meets().contains(first + x)) {
                anchor = x;
            }
        }
        return nearest;
    }

    /** The same row with no gap further from the mean than this. */
    GapSearch within(long most) {
        return new GapSearch(problem, blocked, byHand, first, last, most);
    }

    /** No gap can be further from the mean. */
    long widestDifference() {
        return (long) span * gaps;
    }

    /** The narrowest gap within a difference. */
    private int narrowest(long within) {
        return (int) Math.max(problem.least(), -Math.floorDiv(within - span, (long) gaps));
    }

    /** The widest gap within a difference. */
    private int widest(long within) {
        return (int) Math.min(problem.widest(), Math.floorDiv(span + within, (long) gaps));
    }

    /** The smallest difference that reaches, at most a bound that does. */
    long leastDifference(long bound) {
        long from = 0;
        long to = bound;
        while (from < to) {
            long middle = (from + to) >>> 1;
            if (reaches(middle)) {
                to = middle;
            } else {
                from = middle + 1;
            }
        }
        return to;
    }

    /** Whether the last can be reached from the first with no gap further from the mean. */
    boolean reaches(long within) {
        if (problem.meets().stream().anyMatch(meet -> meet < first || meet > last)) {
            return false;
        }
        int narrow = narrowest(within);
        int wide = widest(within);
        int[] now = start();
        for (int number = 1; number <= gaps; number++) {
            now = step(now, number, narrow, wide);
        }
        return now[span] <= byHand;
    }

    /** The fewest holes by hand with the first alone, by place; too many where it is not. */
    private int[] start() {
        int[] fewest = new int[span + 1];
        Arrays.fill(fewest, problem.count() + 1);
        fewest[0] = blocked.byHand(0, first);
        return fewest;
    }

    /** One fastener more: the fewest by hand of any place it can follow. */
    private int[] step(int[] before, int number, int narrow, int wide) {
        int[] after = new int[span + 1];
        Arrays.fill(after, problem.count() + 1);
        if (narrow > wide) {
            return after;
        }
        // The places it can follow, fewest by hand first, as a window that moves along.
        int[] window = new int[span + 1];
        int head = 0;
        int tail = 0;
        for (int x = narrow; x <= span; x++) {
            while (tail > head && before[window[tail - 1]] >= before[x - narrow]) {
                tail--;
            }
            window[tail++] = x - narrow;
            int least = Math.max(x - wide, backTo[x]);
            while (head < tail && window[head] < least) {
                head++;
            }
            if (head < tail && (x < span || number == gaps)) {
                int hand = blocked.byHand(number, first + x);
                after[x] = Math.min(problem.count() + 1, before[window[head]] + hand);
            }
        }
        return after;
    }

    /** The places with the smallest sum of squares within the difference of this row. */
    Spacing leastSquares() {
        int narrow = narrowest(difference);
        int wide = widest(difference);
        long[][][] least = new long[gaps + 1][byHand + 1][span + 1];
        int[][][] from = new int[gaps + 1][byHand + 1][span + 1];
        for (long[][] one : least) {
            for (long[] row : one) {
                Arrays.fill(row, NEVER);
            }
        }
        int hand = blocked.byHand(0, first);
        if (hand <= byHand) {
            least[0][hand][0] = 0;
        }
        for (int number = 1; number <= gaps; number++) {
            for (int x = narrow; x <= span; x++) {
                int more = blocked.byHand(number, first + x);
                for (int used = more; used <= byHand; used++) {
                    follow(
                            least[number - 1][used - more],
                            least[number][used],
                            from[number][used],
                            x,
                            narrow,
                            wide);
                }
            }
        }
        return spacing(least[gaps], from);
    }

    /** The best place before {@code x}. */
    private void follow(long[] before, long[] after, int[] from, int x, int narrow, int wide) {
        for (int y = x - narrow; y >= Math.max(x - wide, backTo[x]); y--) {
            long off = (long) (x - y) * gaps - span;
            if (before[y] < NEVER && before[y] + off * off < after[x]) {
                after[x] = before[y] + off * off;
                from[x] = y;
            }
        }
    }

    private Spacing spacing(long[][] atTheEnd, int[][][] from) {
        int used = 0;
        for (int more = 1; more <= byHand; more++) {
            used = atTheEnd[more][span] < atTheEnd[used][span] ? more : used;
        }
        List<Integer> places = new ArrayList<>();
        int x = span;
        int left = used;
        for (int number = gaps; number >= 0; number--) {
            places.add(first + x);
            int y = from[number][left][x];
            left -= number > 0 ? blocked.byHand(number, first + x) : 0;
            x = y;
        }
        Collections.reverse(places);
        return new Spacing(
                places,
                problem.blockedAt(places),
                (double) largest(places) / gaps,
                (double) atTheEnd[used][span] / ((long) gaps * gaps));
    }

    private long largest(List<Integer> places) {
        long largest = 0;
        for (int i = 1; i < places.size(); i++) {
            long off = (long) (places.get(i) - places.get(i - 1)) * gaps - span;
            largest = Math.max(largest, Math.abs(off));
        }
        return largest;
    }
}
