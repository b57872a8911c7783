package secondbolt.closure.spacing;

import java.util.List;
import java.util.Optional;

/**
 * Finds the best places for a row of fasteners: as few holes as can be that cannot be stitched;
 * among those the smallest largest difference of a gap from the mean gap; among those the smallest
 * sum of squared differences; among those the ends nearest the middle of their ranges.
 *
 * <p>Exact: no row is left out but such as cannot be better than one that was found.
 */
public final class SpacingSolver {
    private final SpacingProblem problem;
    private final Ground ground;
    private final Steps steps;

    private SpacingSolver(SpacingProblem problem, Steps steps) {
        this.problem = problem;
        this.ground = Ground.of(problem);
        this.steps = steps;
    }

    /**
     * The best there is; nothing if the count, the gaps and the places to meet cannot agree.
     *
     * @throws TooFree if it takes more steps than are left
     */
    public static Optional<Spacing> solve(SpacingProblem problem, Steps steps) {
        return isPossible(problem, steps)
                ? Optional.of(new SpacingSolver(problem, steps).best())
                : Optional.empty();
    }

    /**
     * Whether count, gaps and places to meet agree at all, whatever must be worked by hand.
     *
     * @throws TooFree if it takes more steps than are left
     */
    public static boolean isPossible(SpacingProblem problem, Steps steps) {
        SpacingSolver any = new SpacingSolver(problem, steps);
        return !any.ground.isNone() && any.reaches(any.ground.cleared(), 0);
    }

    /**
     * Whether there is a row with no hole by hand and no gap further from the mean than this part
     * of it.
     *
     * @param part of the mean gap, 8 for an eighth
     * @throws TooFree if it takes more steps than are left
     */
    public static boolean isClear(SpacingProblem problem, int part, Steps steps) {
        SpacingSolver clear = new SpacingSolver(problem, steps);
        return !clear.ground.isNone()
                && clear.reaches(clear.ground, 0)
                && new PairSearch(clear.ground, problem, 0, steps).isAny(span -> span / part);
    }

    /** Whether there is any row with so many by hand. */
    private boolean reaches(Ground on, int byHand) {
        return !new Reach(on, byHand, steps)
                .ends(on.first(), GapBand.all(on), on.lastFrom(), on.lastTo())
                .isEmpty();
    }

    private int fewestByHand() {
        int low = 0;
        int high = problem.count();
        while (low < high) {
            int middle = (low + high) / 2;
            if (reaches(ground, middle)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return high;
    }

    private Spacing best() {
        int byHand = fewestByHand();
        PairSearch pairs = new PairSearch(ground, problem, byHand, steps);
        long difference = pairs.leastDifference();
        PairSearch.Ends ends = pairs.best(difference);
        int span = ends.last() - ends.first();
        GapBand band = GapBand.of(ground, span, difference);
        List<Integer> places =
                new Squares(ground, band, byHand, ends.first(), ends.last(), ends.last(), steps)
                        .row();
        long gaps = ground.gaps();
        return new Spacing(
                places,
                problem.blockedAt(places),
                (double) largest(places) / gaps,
                (double) ends.squares() / (gaps * gaps));
    }

    private static long largest(List<Integer> places) {
        long gaps = places.size() - 1L;
        long span = (long) places.get(places.size() - 1) - places.get(0);
        long largest = 0;
        for (int i = 1; i < places.size(); i++) {
            long off = ((long) places.get(i) - places.get(i - 1)) * gaps - span;
            largest = Math.max(largest, Math.abs(off));
        }
        return largest;
    }
}
