package secondbolt.closure.spacing;

/**
 * For each place the best place before it: the sum of squared gaps up to there with the squared gap
 * between is the smallest, the nearest of those that are equal.
 *
 * <p>The further down a place, the further down the best place before it, since the squares grow
 * faster than the gaps and the narrowest and the widest gap move along. So the middle one of the
 * places is worked out first, and parts the ones to try for those above and for those below.
 */
final class Nearest {
    static final long NEVER = Long.MAX_VALUE / 4;

    private final Squares.Level before;
    private final Squares.Level after;
    private final GapBand band;
    private final int[] from;
    private int fromCount;

    /**
     * Of one fastener after another.
     *
     * @param before the sums up to the one
     * @param after takes the sums up to the other
     */
    Nearest(Squares.Level before, Squares.Level after, GapBand band) {
        this.before = before;
        this.after = after;
        this.band = band;
        this.from = new int[before.width()];
    }

    /** Works out those from one place to another, none of them after another that must be met. */
    void between(int lowest, int highest, int to) {
        fromCount = 0;
        int first = Math.max(lowest, before.from());
        int last = Math.min(highest, before.to());
        for (int place = first; place <= last; place++) {
            if (before.sum(place) < NEVER) {
                from[fromCount++] = place;
            }
        }
        if (fromCount > 0) {
            int top = Math.max(after.from(), from[0] + band.narrow());
            int foot = Math.min(Math.min(after.to(), to), from[fromCount - 1] + band.wide());
            part(top, foot, 0, fromCount - 1);
        }
    }

    private void part(int top, int foot, int lowest, int highest) {
        if (top > foot || lowest > highest) {
            return;
        }
        int middle = (top + foot) >> 1;
        int low = lowest;
        while (low <= highest && from[low] < middle - band.wide()) {
            low++;
        }
        long least = NEVER;
        int best = -1;
        int at = low;
        for (; at <= highest && from[at] <= middle - band.narrow(); at++) {
            long gap = (long) middle - from[at];
            long sum = before.sum(from[at]) + gap * gap;
            if (sum <= least) {
                least = sum;
                best = at;
            }
        }
        if (best >= 0) {
            after.put(middle, least, from[best]);
        }
        // Without any, those above reach none further down, and those below none further up.
        part(top, middle - 1, lowest, best >= 0 ? best : low - 1);
        part(middle + 1, foot, best >= 0 ? best : low, highest);
    }
}
