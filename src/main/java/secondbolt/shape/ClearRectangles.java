package secondbolt.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The largest upright rectangles free inside a region.
 *
 * <p>Where every edge of the region is upright or level they are exact. Beside slanted and round
 * edges they are never larger than what is there, and what is given away is at most half a
 * millimetre a side. Coordinates are rounded to a millionth of a millimetre.
 *
 * <p>Derived: a largest rectangle is bounded above and below by strips; for each upper strip the
 * free spans of the strips below are intersected one by one, until none is left or none can still
 * beat the best found. A strip whose free spans are free in the strip above as well cannot be the
 * uppermost of a largest rectangle.
 */
public final class ClearRectangles {
    /**
     * Two rectangles that differ by less are equally large; the upper, then the left one counts.
     */
    private static final double SAME_MM2 = 1e-3;

    private ClearRectangles() {}

    /** The largest by area; none in an empty region. */
    public static Optional<Box> largest(Region region) {
        return Search.best(FreeStrips.of(region), 0, Aim.AREA);
    }

    /**
     * The largest, then the largest beside it, and so on, so that none overlaps another.
     *
     * @param most how many at most
     * @param leastSideMm no side is shorter than this
     */
    public static List<Box> greedy(Region region, int most, double leastSideMm) {
        List<Box> taken = new ArrayList<>();
        FreeStrips rest = FreeStrips.of(region);
        while (taken.size() < most) {
            Optional<Box> next = Search.best(rest, leastSideMm, Aim.AREA);
            if (next.isEmpty()) {
                break;
            }
            taken.add(next.get());
            rest = rest.without(next.get());
        }
        return List.copyOf(taken);
    }

    /**
     * For each width the longest rectangle along that is at least so wide across, in order.
     *
     * @param widthsMm above zero
     */
    public static List<Optional<Box>> longestRuns(Region region, List<Double> widthsMm) {
        FreeStrips strips = FreeStrips.of(region);
        return widthsMm.stream().map(width -> Search.best(strips, width, Aim.LENGTH)).toList();
    }

    private enum Aim {
        /** The largest area, with no side below the least one. */
        AREA,
        /** The greatest length, with no width below the least one. */
        LENGTH
    }

    /** One search; holds the spans that are still free and the best found so far. */
    private static final class Search {
        private final FreeStrips strips;
        private final double leastMm;
        private final Aim aim;
        private final double[] widest;
        private final int[] wideUntil;
        private double most;
        private Optional<Box> best = Optional.empty();
        private double[] free = new double[0];
        private double[] spare = new double[0];
        private int count;

        private Search(FreeStrips strips, double leastMm, Aim aim) {
            this.strips = strips;
            this.leastMm = leastMm;
            this.aim = aim;
            this.widest = strips.widest();
            this.wideUntil = wideUntil(widest, leastMm);
        }

        /** For each strip, the last one below it down to which all are wide enough. */
        private static int[] wideUntil(double[] widest, double leastMm) {
            int[] until = new int[widest.length];
            for (int i = widest.length - 1; i >= 0; i--) {
                boolean wide = widest[i] >= leastMm - FreeStrips.SAME_MM;
                boolean goesOn = i + 1 < widest.length && until[i + 1] > i;
                until[i] = !wide ? i - 1 : goesOn ? until[i + 1] : i;
            }
            return until;
        }

        /** A quick search of coarser strips first says what is worth looking at. */
        static Optional<Box> best(FreeStrips strips, double leastMm, Aim aim) {
            Search search = new Search(strips, leastMm, aim);
            int together = (int) Math.sqrt(strips.count()) / 2;
            if (together > 1) {
                Search quick = new Search(strips.coarser(together), leastMm, aim);
                quick.search();
                // A little less, so that the first of several equally large ones is found again.
                search.most = quick.most - 3 * search.slack();
            }
            search.search();
            return search.best;
        }

        private void search() {
            for (int from = 0; from < strips.count(); from++) {
                if (!strips.opensUpwards(from)) {
                    int last = lastWorth(from);
                    if (last >= from) {
                        searchFrom(from, last);
                    }
                }
            }
        }

        /**
         * The last strip down to which a rectangle from here may still beat the best: none is wider
         * than the widest span of any strip it crosses.
         */
        private int lastWorth(int from) {
            if (aim == Aim.LENGTH) {
                int last = wideUntil[from];
                return last >= from && strips.bottom(last) - strips.top(from) > most + slack()
                        ? last
                        : -1;
            }
            double end = strips.bottom(widest.length - 1);
            double width = Double.POSITIVE_INFINITY;
            int last = -1;
            for (int to = from; to < widest.length; to++) {
                width = Math.min(width, widest[to]);
                if (width < leastMm - FreeStrips.SAME_MM || width <= FreeStrips.SAME_MM) {
                    return last;
                }
                // So narrow by now that not even down to the end it would do.
                if (worth(width, end - strips.top(from)) <= most + slack()) {
                    return last;
                }
                if (worth(width, strips.bottom(to) - strips.top(from)) > most + slack()) {
                    last = to;
                }
            }
            return last;
        }

        private void searchFrom(int from, int last) {
            double top = strips.top(from);
            double[] first = strips.spans(from);
            free = first.clone();
            count = first.length;
            for (int to = from; to <= last; to++) {
                if (to > from) {
                    intersect(strips.spans(to));
                }
                double width = dropNarrow();
                if (count == 0 || worth(width, strips.bottom(last) - top) <= most + slack()) {
                    return;
                }
                double height = strips.bottom(to) - top;
                if (aim == Aim.LENGTH || height >= leastMm - FreeStrips.SAME_MM) {
                    take(top, height);
                }
            }
        }

        private double worth(double width, double height) {
            return aim == Aim.AREA ? width * height : height;
        }

        private double slack() {
            return aim == Aim.AREA ? SAME_MM2 : FreeStrips.SAME_MM;
        }

        /** Drops the spans that are too narrow, and answers how wide the widest is. */
        private double dropNarrow() {
            int kept = 0;
            double greatest = 0;
            for (int i = 0; i < count; i += 2) {
                double width = free[i + 1] - free[i];
                if (width >= leastMm - FreeStrips.SAME_MM && width > FreeStrips.SAME_MM) {
                    free[kept] = free[i];
                    free[kept + 1] = free[i + 1];
                    kept += 2;
                    greatest = Math.max(greatest, width);
                }
            }
            count = kept;
            return greatest;
        }

        private void intersect(double[] other) {
            if (spare.length < count + other.length) {
                spare = new double[count + other.length];
            }
            count = FreeStrips.intersect(free, count, other, spare);
            double[] old = free;
            free = spare;
            spare = old;
        }

        private void take(double top, double height) {
            for (int i = 0; i < count; i += 2) {
                double width = free[i + 1] - free[i];
                if (worth(width, height) > most + slack()) {
                    most = worth(width, height);
                    best = Optional.of(box(free[i], top, width, height));
                }
            }
        }

        private static Box box(double left, double top, double width, double height) {
            return new Box(
                    FreeStrips.rounded(left),
                    FreeStrips.rounded(top),
                    FreeStrips.rounded(width),
                    FreeStrips.rounded(height));
        }
    }
}
