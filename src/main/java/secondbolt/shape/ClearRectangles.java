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
        return new Search(FreeStrips.of(region), 0, Aim.AREA).best();
    }

    /**
     * The largest, then the largest beside it, and so on, so that none overlaps another.
     *
     * @param most how many at most
     * @param leastSideMm no side is shorter than this
     */
    public static List<Box> greedy(Region region, int most, double leastSideMm) {
        List<Box> taken = new ArrayList<>();
        Region rest = region;
        while (taken.size() < most) {
            Optional<Box> next = new Search(FreeStrips.of(rest), leastSideMm, Aim.AREA).best();
            if (next.isEmpty()) {
                break;
            }
            taken.add(next.get());
            rest = rest.minus(Region.of(next.get()));
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
        return widthsMm.stream()
                .map(width -> new Search(strips, width, Aim.LENGTH).best())
                .toList();
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
        private double most;
        private Optional<Box> best = Optional.empty();
        private double[] free = new double[0];
        private double[] spare = new double[0];
        private int count;

        Search(FreeStrips strips, double leastMm, Aim aim) {
            this.strips = strips;
            this.leastMm = leastMm;
            this.aim = aim;
        }

        Optional<Box> best() {
            for (int from = 0; from < strips.count(); from++) {
                if (!strips.opensUpwards(from)) {
                    searchFrom(from);
                }
            }
            return best;
        }

        private void searchFrom(int from) {
            double top = strips.top(from);
            double[] first = strips.spans(from);
            free = first.clone();
            spare = new double[first.length + 2];
            count = first.length;
            for (int to = from; to < strips.count(); to++) {
                if (to > from) {
                    intersect(strips.spans(to));
                }
                double widest = dropNarrow();
                if (count == 0 || worth(widest, strips.end() - top) <= most + slack()) {
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
            double widest = 0;
            for (int i = 0; i < count; i += 2) {
                double width = free[i + 1] - free[i];
                if (width >= leastMm - FreeStrips.SAME_MM && width > FreeStrips.SAME_MM) {
                    free[kept] = free[i];
                    free[kept + 1] = free[i + 1];
                    kept += 2;
                    widest = Math.max(widest, width);
                }
            }
            count = kept;
            return widest;
        }

        private void intersect(double[] other) {
            int kept = 0;
            int i = 0;
            int j = 0;
            if (spare.length < count + other.length) {
                spare = new double[count + other.length];
            }
            while (i < count && j < other.length) {
                double left = Math.max(free[i], other[j]);
                double right = Math.min(free[i + 1], other[j + 1]);
                if (right > left) {
                    spare[kept++] = left;
                    spare[kept++] = right;
                }
                if (free[i + 1] < other[j + 1]) {
                    i += 2;
                } else {
                    j += 2;
                }
            }
            double[] old = free;
            free = spare;
            spare = old;
            count = kept;
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
