package secondbolt.closure.spacing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds the best places for a row of fasteners: as few holes as can be that cannot be stitched;
 * among those the smallest largest difference of a gap from the mean gap; among those the smallest
 * sum of squared differences; among those the ends nearest the middle of their ranges.
 *
 * <p>Exact: every pair of ends is looked at, and for each the gaps by dynamic programming.
 */
public final class SpacingSolver {
    private final SpacingProblem problem;
    private final BlockedPlaces blocked;
    private final int byHand;

    private SpacingSolver(SpacingProblem problem, BlockedPlaces blocked, int byHand) {
        this.problem = problem;
        this.blocked = blocked;
        this.byHand = byHand;
    }

    /** The best there is; nothing if the count, the gaps and the places to meet cannot agree. */
    public static Optional<Spacing> solve(SpacingProblem problem) {
        if (!isPossible(problem)) {
            return Optional.empty();
        }
        BlockedPlaces blocked = new BlockedPlaces(problem);
        return IntStream.rangeClosed(0, problem.count())
                .mapToObj(byHand -> new SpacingSolver(problem, blocked, byHand).best())
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** Whether count, gaps and places to meet agree at all, whatever must be worked by hand. */
    public static boolean isPossible(SpacingProblem problem) {
        SpacingSolver any = new SpacingSolver(problem, new BlockedPlaces(problem), problem.count());
        return any.endsFromTheMiddle().stream()
                .map(ends -> any.gaps(ends))
                .anyMatch(row -> row.reaches(row.widestDifference()));
    }

    /**
     * Whether there is a row with no hole by hand and no gap further from the mean than this part
     * of it.
     *
     * @param part of the mean gap, 8 for an eighth
     */
    public static boolean isClear(SpacingProblem problem, int part) {
        SpacingSolver clear = new SpacingSolver(problem, new BlockedPlaces(problem), 0);
        return clear.endsFromTheMiddle().stream()
                .anyMatch(ends -> clear.gaps(ends).reaches((ends[1] - ends[0]) / part));
    }

    private GapSearch gaps(int[] ends) {
        return new GapSearch(problem, blocked, byHand, ends[0], ends[1]);
    }

    private Optional<Spacing> best() {
        Optional<Spacing> best = Optional.empty();
        for (GapSearch row : candidates()) {
            Spacing spacing = row.leastSquares();
            if (best.isEmpty() || spacing.squares() < best.get().squares()) {
                best = Optional.of(spacing);
            }
            if (spacing.squares() == 0) {
                return best;
            }
        }
        return best;
    }

    /** The rows whose largest difference is the smallest, their ends in the middle first. */
    private List<GapSearch> candidates() {
        List<GapSearch> candidates = new ArrayList<>();
        long least = Long.MAX_VALUE;
        for (int[] ends : endsFromTheMiddle()) {
            GapSearch row = gaps(ends);
            long bound = Math.min(least, row.widestDifference());
            if (!row.reaches(bound)) {
                continue;
            }
            long difference = row.leastDifference(bound);
            if (difference < least) {
                candidates.clear();
                least = difference;
            }
            candidates.add(row.within(difference));
        }
        return candidates;
    }

    private List<int[]> endsFromTheMiddle() {
        List<int[]> ends = new ArrayList<>();
        for (int first = problem.first().from(); first <= problem.first().to(); first++) {
            for (int last = problem.last().from(); last <= problem.last().to(); last++) {
                if (last > first) {
                    ends.add(new int[] {first, last});
                }
            }
        }
        ends.sort(
                Comparator.comparingInt(
                        e -> problem.first().offMiddle(e[0]) + problem.last().offMiddle(e[1])));
        return ends;
    }
}
