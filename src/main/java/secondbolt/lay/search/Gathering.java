package secondbolt.lay.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import secondbolt.lay.nofit.InnerFit;
import secondbolt.lay.nofit.PairNoFitRegion;

/**
 * Slides the items of a lay together, towards one corner of their containers after the other, so
 * that what stays over stays in one piece. An item never changes its container or how it is turned.
 */
final class Gathering {
    /** How near a slide comes to what it ends at; at a straight edge it ends there exactly. */
    private static final double NEAR_MM = 0.05;

    private static final int PASSES = 2;

    /**
     * To the low end first or to the high end, to the left or to the right, along or across first.
     */
    private static final List<Towards> CORNERS =
            List.of(
                    new Towards(true, -1, -1),
                    new Towards(false, -1, -1),
                    new Towards(true, -1, 1),
                    new Towards(false, -1, 1),
                    new Towards(true, 1, -1),
                    new Towards(false, 1, -1),
                    new Towards(true, 1, 1),
                    new Towards(false, 1, 1));

    private final OverlapScorer scorer;
    private final Problem problem;
    private final FreeRectangle over;
    private final double gapMm;

    /**
     * A corner.
     *
     * @param isAlongFirst whether items slide along first, else across
     * @param along -1 to the low end, 1 to the high one
     * @param across -1 to the left, 1 to the right
     */
    private record Towards(boolean isAlongFirst, int along, int across) {}

    /**
     * Slides items of a problem.
     *
     * @param limit how far of each container may be used along
     */
    Gathering(Problem problem, int containers, double[] limit) {
        this.problem = problem;
        this.scorer = new OverlapScorer(problem, limit);
        this.over = new FreeRectangle(problem, containers);
        this.gapMm = problem.gapMm();
    }

    long steps() {
        return scorer.steps();
    }

    /** The arrangement, or one slid together that leaves a larger rectangle over. */
    Arrangement best(Arrangement from, Separation.StopRule stop) {
        Arrangement best = from;
        double most = over.areaMm2(from);
        for (Towards corner : CORNERS) {
            if (stop.endsAfter(steps())) {
                return best;
            }
            Arrangement slid = slid(from, corner);
            double area = over.areaMm2(slid);
            if (area > most * 1.001) {
                most = area;
                best = slid;
            }
        }
        return best;
    }

    private Arrangement slid(Arrangement from, Towards corner) {
        scorer.take(from);
        for (int pass = 0; pass < PASSES; pass++) {
            for (int item : nearestFirst(corner)) {
                slide(item, corner.isAlongFirst(), corner);
                slide(item, !corner.isAlongFirst(), corner);
                slide(item, corner.isAlongFirst(), corner);
            }
        }
        return scorer.arrangement.copy();
    }

    private List<Integer> nearestFirst(Towards corner) {
        Arrangement now = scorer.arrangement;
        return IntStream.range(0, problem.items())
                .boxed()
                .sorted(
                        Comparator.comparingDouble(
                                i -> begins(now, i, corner.isAlongFirst(), corner)))
                .toList();
    }

    /** How far an item's near side lies from the end it slides to, but for a constant. */
    private double begins(Arrangement now, int i, boolean isAlong, Towards corner) {
        PlacementOption shape = problem.options.get(now.option[i]);
        int way = isAlong ? corner.along() : corner.across();
        double at = isAlong ? now.y[i] : now.x[i];
        double size = isAlong ? shape.heightMm() : shape.widthMm();
        return way < 0 ? at : -at - size;
    }

    private void slide(int item, boolean isAlong, Towards corner) {
        Arrangement now = scorer.arrangement;
        int way = isAlong ? corner.along() : corner.across();
        double start = isAlong ? now.y[item] : now.x[item];
        double at = start;
        double[] stops = stops(item, isAlong, way);
        for (double end : stops) {
            double to = allowed(item, isAlong, end);
            if ((to - start) * way > 0 && isFree(item, isAlong, to)) {
                at = to;
                break;
            }
        }
        at = creep(item, isAlong, way, at);
        if (at != start) {
            scorer.move(
                    item,
                    now.container[item],
                    now.option[item],
                    isAlong ? now.x[item] : at,
                    isAlong ? at : now.y[item]);
        }
    }

    /** Where it would touch the end, another item, or the box of one; the farthest first. */
    private double[] stops(int item, boolean isAlong, int way) {
        Arrangement now = scorer.arrangement;
        PlacementOption own = problem.options.get(now.option[item]);
        double size = isAlong ? own.heightMm() : own.widthMm();
        int n = problem.items();
        double[] stops = new double[2 * n];
        for (int j = 0; j < n; j++) {
            PlacementOption other = problem.options.get(now.option[j]);
            double from = isAlong ? now.y[j] : now.x[j];
            double wide = isAlong ? other.heightMm() : other.widthMm();
            boolean counts = j != item && now.container[j] == now.container[item];
            stops[j] =
                    !counts
                            ? way * Double.MAX_VALUE / 2
                            : way < 0 ? from + wide + gapMm : from - size - gapMm;
            stops[n + j] = counts ? touching(item, j, isAlong, way) : stops[j];
        }
        // Beyond every end stands for the end itself.
        return Arrays.stream(stops)
                .boxed()
                .sorted(Comparator.comparingDouble((Double stop) -> -way * stop))
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    /** Where it would touch another item from the side it slides from. */
    private double touching(int item, int other, boolean isAlong, int way) {
        Arrangement now = scorer.arrangement;
        PairNoFitRegion pair = scorer.pair(now.option[item], now.option[other]);
        double ox = now.x[other];
        double oy = now.y[other];
        double share = way < 0 ? 0 : 0.999;
        double touch =
                isAlong
                        ? oy - pair.touchY(ox - now.x[item], share)
                        : ox - pair.touchX(oy - now.y[item], share);
        return Double.isNaN(touch) ? way * Double.MAX_VALUE / 2 : touch;
    }

    /** On, in halved strides, where what is met is not straight. */
    private double creep(int item, boolean isAlong, int way, double from) {
        PlacementOption own = problem.options.get(scorer.arrangement.option[item]);
        double at = from;
        double stride = (isAlong ? own.heightMm() : own.widthMm()) / 4;
        while (stride > NEAR_MM) {
            double to = allowed(item, isAlong, at + way * stride);
            if ((to - at) * way > 0 && isFree(item, isAlong, to)) {
                at = to;
            } else {
                stride /= 2;
            }
        }
        return at;
    }

    private double allowed(int item, boolean isAlong, double position) {
        Arrangement now = scorer.arrangement;
        InnerFit fit = scorer.innerFit(now.container[item], now.option[item]);
        return isAlong
                ? fit.nearestY(position, scorer.limit[now.container[item]])
                : fit.nearestX(position);
    }

    private boolean isFree(int item, boolean isAlong, double to) {
        Arrangement now = scorer.arrangement;
        double x = isAlong ? now.x[item] : to;
        double y = isAlong ? to : now.y[item];
        return scorer.cost(item, now.container[item], now.option[item], x, y, Double.MIN_VALUE)
                == 0;
    }
}
