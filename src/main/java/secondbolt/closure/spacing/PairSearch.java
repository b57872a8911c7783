package secondbolt.closure.spacing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;

/**
 * Looks for the two ends of the best row with so many holes by hand. All rows from one first place
 * whose gaps are bounded alike are looked at together, from the end that has fewer places.
 */
final class PairSearch {
    private final Ground ground;
    private final SpacingProblem problem;
    private final boolean isMirrored;
    private final int byHand;
    private final Steps steps;
    private final Reach reach;

    PairSearch(Ground ground, SpacingProblem problem, int byHand, Steps steps) {
        this.isMirrored =
                ground.lastTo() - ground.lastFrom() < ground.firstTo() - ground.firstFrom();
        this.ground = isMirrored ? ground.mirrored() : ground;
        this.problem = problem;
        this.byHand = byHand;
        this.steps = steps;
        this.reach = new Reach(this.ground, byHand, steps);
    }

    /**
     * The ends of a row.
     *
     * @param squares of its gaps' differences from the mean, times the gaps squared
     * @param offMiddle how far they are from the middle of their ranges together, in half steps
     */
    record Ends(int first, int last, long squares, int offMiddle) {
        static final Comparator<Ends> BEST =
                Comparator.comparingLong(Ends::squares)
                        .thenComparingInt(Ends::offMiddle)
                        .thenComparingInt(Ends::first)
                        .thenComparingInt(Ends::last);
    }

    /** Whether there is a row with no gap further from its mean, by the length of the row. */
    boolean isAny(IntToLongFunction within) {
        List<GapBand> bands = bands(within);
        return bands.stream()
                .filter(this::mayReach)
                .anyMatch(
                        band ->
                                IntStream.rangeClosed(ground.firstFrom(), ground.firstTo())
                                        .anyMatch(first -> !ends(first, band).isEmpty()));
    }

    private List<GapBand> bands(IntToLongFunction within) {
        steps.take(2L * (ground.lastTo() - ground.firstFrom()));
        return GapBand.of(ground, within);
    }

    private boolean mayReach(GapBand band) {
        return !reach.ends(ground.first(), band, ground.lastFrom(), ground.lastTo()).isEmpty();
    }

    private Places ends(int first, GapBand band) {
        int from = Math.max(ground.lastFrom(), first + band.shortest());
        int to = Math.min(ground.lastTo(), first + band.longest());
        steps.take(4);
        return from > to ? Places.NONE : reach.ends(Places.of(first, first), band, from, to);
    }

    /** The smallest largest difference of any row, in steps times the gaps; there must be a row. */
    long leastDifference() {
        GapBand all = GapBand.all(ground);
        long low =
                IntStream.rangeClosed(all.shortest(), all.longest())
                        .mapToLong(span -> GapBand.leastOff(span, ground.gaps()))
                        .min()
                        .orElseThrow();
        long most = (long) all.longest() * ground.gaps();
        long wider = 0;
        while (low + wider < most && !reaches(low + wider)) {
            low = low + wider + 1;
            wider = 2 * wider + 1;
        }
        long high = Math.min(most, low + wider);
        while (low < high) {
            long middle = (low + high) >>> 1;
            if (reaches(middle)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return high;
    }

    private boolean reaches(long difference) {
        return isAny(span -> difference);
    }

    /** The best ends of the rows with no gap further from its mean than this; there must be one. */
    Ends best(long difference) {
        Optional<Ends> best = Optional.empty();
        List<Integer> firsts =
                IntStream.rangeClosed(ground.firstFrom(), ground.firstTo())
                        .boxed()
                        .sorted(Comparator.comparingInt(this::offFirst))
                        .toList();
        for (GapBand band : bands(span -> difference)) {
            if (!mayReach(band)) {
                continue;
            }
            long least = band.leastSquares(ground.gaps());
            for (int first : firsts) {
                if (best.isEmpty() || mayBeBetter(best.get(), least, first, band)) {
                    best = better(best, first, band);
                }
            }
        }
        return best.orElseThrow();
    }

    private boolean mayBeBetter(Ends best, long least, int first, GapBand band) {
        int from = Math.max(ground.lastFrom(), first + band.shortest());
        int to = Math.min(ground.lastTo(), first + band.longest());
        steps.take(2);
        if (least != best.squares() || from > to) {
            return least < best.squares();
        }
        return offFirst(first) + leastOffLast(from, to) <= best.offMiddle();
    }

    private Optional<Ends> better(Optional<Ends> best, int first, GapBand band) {
        Places ends = ends(first, band);
        if (ends.isEmpty()) {
            return best;
        }
        int from = ends.from(0);
        int to = ends.to(ends.runs() - 1);
        Squares.Level sums = new Squares(ground, band, byHand, first, from, to, steps).sums();
        Optional<Ends> better = best;
        for (int last = from; last <= to; last++) {
            if (sums.sum(last) < Nearest.NEVER) {
                Ends found = found(first, last, sums.sum(last));
                if (better.isEmpty() || Ends.BEST.compare(found, better.get()) < 0) {
                    better = Optional.of(found);
                }
            }
        }
        return better;
    }

    /** The sum of squared differences follows from that of the squared gaps. */
    private Ends found(int first, int last, long squaredGaps) {
        long gaps = ground.gaps();
        long span = (long) last - first;
        long squares = gaps * (gaps * squaredGaps - span * span);
        int off = offFirst(first) + leastOffLast(last, last);
        return isMirrored
                ? new Ends(-last, -first, squares, off)
                : new Ends(first, last, squares, off);
    }

    private int offFirst(int first) {
        return isMirrored ? problem.last().offMiddle(-first) : problem.first().offMiddle(first);
    }

    private int leastOffLast(int from, int to) {
        Zone range = isMirrored ? problem.first() : problem.last();
        int middle = Math.floorDiv(range.from() + range.to(), 2) * (isMirrored ? -1 : 1);
        int nearest = Math.max(from, Math.min(to, middle));
        int least = Integer.MAX_VALUE;
        for (int place = Math.max(from, nearest - 1); place <= Math.min(to, nearest + 1); place++) {
            least = Math.min(least, range.offMiddle(isMirrored ? -place : place));
        }
        return least;
    }
}
