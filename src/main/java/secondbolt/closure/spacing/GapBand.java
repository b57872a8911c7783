package secondbolt.closure.spacing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToLongFunction;

/**
 * Rows whose gaps are bounded alike.
 *
 * @param shortest from the first to the last, at the least
 * @param longest at the most
 * @param narrow their narrowest gap
 * @param wide their widest gap
 */
record GapBand(int shortest, int longest, int narrow, int wide) {
    /** All rows whatever. */
    static GapBand all(Ground ground) {
        return new GapBand(
                Math.max(1, ground.lastFrom() - ground.firstTo()),
                ground.lastTo() - ground.firstFrom(),
                ground.least(),
                ground.widest());
    }

    /**
     * The rows whose gaps keep near their mean, by length.
     *
     * @param within how far from the mean a gap may be, in steps times the number of gaps, by the
     *     length of the row
     */
    static List<GapBand> of(Ground ground, IntToLongFunction within) {
        List<GapBand> bands = new ArrayList<>();
        GapBand all = all(ground);
        for (int span = all.shortest; span <= all.longest; span++) {
            GapBand one = of(ground, span, within.applyAsLong(span));
            int before = bands.size() - 1;
            if (one.isNone()) {
                continue;
            }
            if (before >= 0 && bands.get(before).isFollowedBy(one)) {
                GapBand more = bands.remove(before);
                bands.add(new GapBand(more.shortest, span, one.narrow, one.wide));
            } else {
                bands.add(one);
            }
        }
        return bands;
    }

    /** The rows of one length. */
    static GapBand of(Ground ground, int span, long within) {
        long gaps = ground.gaps();
        int narrow = (int) Math.max(ground.least(), -Math.floorDiv(within - span, gaps));
        int wide = (int) Math.min(ground.widest(), Math.floorDiv(span + within, gaps));
        return new GapBand(span, span, narrow, wide);
    }

    private boolean isNone() {
        return narrow > wide;
    }

    private boolean isFollowedBy(GapBand other) {
        return longest + 1 == other.shortest && narrow == other.narrow && wide == other.wide;
    }

    /** The least that any gap of any of them can be off, in steps times the number of gaps. */
    static long leastOff(int span, int gaps) {
        long over = span % gaps;
        return over == 0 ? 0 : Math.max(over, gaps - over);
    }

    /** The least sum of squares of any of them, in square steps times the gaps squared. */
    long leastSquares(int gaps) {
        long least = Long.MAX_VALUE;
        for (int span = shortest; span <= longest && least > 0; span++) {
            long over = span % gaps;
            least = Math.min(least, over * (gaps - over) * gaps);
        }
        return least;
    }
}
