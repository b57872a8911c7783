package secondbolt.closure.row;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.closure.fastening.FastenerSpread;
import secondbolt.measure.Length;

/**
 * How near and how far from one to the next fasteners may be. The grid only comes near to these, as
 * ends that are told need not lie on it; what counts is a row's true lengths.
 *
 * @param least nearer, they or their holes would overlap
 * @param most the largest gap, if told
 * @param step of the grid
 */
record GapBounds(Length least, Optional<Length> most, Length step) {
    private static final int NO_LIMIT = 1_000_000;

    /** How strictly a row is searched on the grid. */
    enum Care {
        /** A step beyond both, so that the rounding of the ends never forbids what fits. */
        LOOSE(1),
        /** As the bounds are. */
        CLOSE(0),
        /** A step inside both, so that no rounding of the ends can break them. */
        SAFE(-1);

        private final int slack;

        Care(int slack) {
            this.slack = slack;
        }
    }

    /** The narrowest gap on the grid, 1 step or more. */
    int narrowest(Care care) {
        return Math.max(1, (int) Math.ceil(least.millimetres() / step.millimetres()) - care.slack);
    }

    /** The widest gap on the grid. */
    int widest(Care care) {
        return most.map(m -> (int) Math.floor(m.millimetres() / step.millimetres()) + care.slack)
                .orElse(NO_LIMIT);
    }

    /** Whether every gap of a row lies within both, to the last fraction. */
    boolean hold(List<Length> places) {
        for (int i = 1; i < places.size(); i++) {
            Length gap = places.get(i).minus(places.get(i - 1));
            if (gap.isShorterThan(least) || most.filter(gap::isLongerThan).isPresent()) {
                return false;
            }
        }
        return true;
    }

    /** Whether so many gaps can lie between a first and a last one that may move. */
    boolean allow(int gaps, Length longest, Length shortest) {
        return !least.times(gaps).isLongerThan(longest)
                && most.filter(m -> m.times(gaps).isShorterThan(shortest)).isEmpty();
    }

    /**
     * A row with equal gaps, as wide as may be.
     *
     * @param gaps that are {@linkplain #allow allowed}
     */
    List<Length> evenly(int gaps, FastenerSpread.EndRange first, FastenerSpread.EndRange last) {
        Length longest = last.to().minus(first.from());
        Length span = most.map(m -> m.times(gaps).orShorter(longest)).orElse(longest);
        Length start = first.from().orLonger(last.from().minus(span));
        return IntStream.rangeClosed(0, gaps)
                .mapToObj(i -> start.plus(span.times(i).dividedBy(gaps)))
                .toList();
    }
}
