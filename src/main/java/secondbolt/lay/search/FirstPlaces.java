package secondbolt.lay.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;
import secondbolt.lay.nofit.InnerFit;
import secondbolt.lay.nofit.PlaneContainer;

/**
 * Lays items one after the other, each where the first room is for it: row by row from the low end,
 * and from left to right. Where there are very many, that comes to a lay long before pushing them
 * apart does.
 *
 * <p>Common practice, no source: rows begin where something that is laid ends; what is met is
 * passed by as far as its no-fit region says; what has found room sinks as far as it can. Items
 * that are alike go on where the last of them was laid, since what is taken stays taken.
 */
final class FirstPlaces {
    /** How near a sinking item comes to what it meets. */
    private static final double NEAR_MM = 0.05;

    /** Rows that begin nearer together than this are one. */
    private static final double SAME_ROW_MM = 0.2;

    /** Past what is not sound an item goes in so many strides a width. */
    private static final int STRIDES_A_WIDTH = 6;

    /** So many positions are looked at for an item on the average, and not more. */
    private static final long LOOKS_AN_ITEM = 600;

    private final Problem problem;
    private final int containers;
    private final OverlapScorer scorer;
    private final List<TreeSet<Double>> rows = new ArrayList<>();
    private final Arrangement laid;
    private final long most;

    /** How far items that are alike have come. */
    private static final class Reached {
        private int container;
        private double row = Double.NEGATIVE_INFINITY;
    }

    /** For items on the first containers. */
    FirstPlaces(Problem problem, int containers) {
        this.problem = problem;
        this.containers = containers;
        this.most = LOOKS_AN_ITEM * problem.items();
        double[] high = problem.containers.stream().mapToDouble(PlaneContainer::high).toArray();
        scorer = new OverlapScorer(problem, high);
        laid = new Arrangement(problem.items());
        for (PlaneContainer container : problem.containers.subList(0, containers)) {
            rows.add(new TreeSet<>(List.of(container.low())));
        }
    }

    /**
     * Lays items.
     *
     * @param order of the items, those that should surely be laid first
     * @return those that found no place
     */
    List<Integer> lay(List<Integer> order) {
        scorer.clear();
        Map<List<Integer>, Reached> alike = new HashMap<>();
        List<Integer> left = new ArrayList<>();
        for (int item : order) {
            List<Integer> kind = new ArrayList<>(List.of(problem.grade[item]));
            Arrays.stream(problem.choices.get(item)).forEach(kind::add);
            if (!lay(item, alike.computeIfAbsent(kind, any -> new Reached()))) {
                left.add(item);
            }
        }
        return left;
    }

    /** Where all that are laid lie. */
    Arrangement laid() {
        return laid;
    }

    /** How many positions were looked at. */
    long steps() {
        return scorer.steps();
    }

    private boolean lay(int item, Reached reached) {
        for (; reached.container < containers; reached.container++) {
            TreeSet<Double> begins = rows.get(reached.container);
            Double row =
                    reached.row == Double.NEGATIVE_INFINITY
                            ? begins.first()
                            : begins.ceiling(reached.row);
            while (row != null && scorer.steps() < most) {
                reached.row = row;
                if (lay(item, reached.container, row)) {
                    return true;
                }
                row = begins.higher(row + SAME_ROW_MM);
            }
            if (row != null) {
                return false;
            }
            reached.row = Double.NEGATIVE_INFINITY;
        }
        return false;
    }

    private boolean lay(int item, int container, double row) {
        for (int option : problem.choices.get(item)) {
            InnerFit fit = scorer.innerFit(container, option);
            double y = fit.nearestY(row, scorer.limit[container]);
            if (scorer.hasRoom(container, option) && y >= row - OverlapScorer.DUST_MM) {
                OptionalDouble x = firstX(item, container, option, y);
                if (x.isPresent()) {
                    put(item, container, option, x.getAsDouble(), y);
                    return true;
                }
            }
        }
        return false;
    }

    private OptionalDouble firstX(int item, int container, int option, double y) {
        InnerFit fit = scorer.innerFit(container, option);
        double x = fit.nearestX(problem.containers.get(container).left());
        while (scorer.steps() < most) {
            int met = scorer.met(item, container, option, x, y);
            if (met == OverlapScorer.NOTHING) {
                return OptionalDouble.of(x);
            }
            double stride = problem.options.get(option).widthMm() / STRIDES_A_WIDTH;
            double next = met == OverlapScorer.RIM ? x + stride : past(met, option, x, y, stride);
            // The nearest allowed position may be one that was looked at.
            double allowed = fit.nearestX(next);
            allowed = allowed > x ? allowed : fit.nearestX(next + fit.across().everyMm());
            if (allowed <= x) {
                return OptionalDouble.empty();
            }
            x = allowed;
        }
        return OptionalDouble.empty();
    }

    /** Where it lies clear of another at its right. */
    private double past(int other, int option, double x, double y, double stride) {
        double ox = laid.x[other];
        double oy = laid.y[other];
        double touch = ox - scorer.pair(option, laid.option[other]).leftmostTouchX(oy - y);
        return touch > x ? touch : x + stride;
    }

    private void put(int item, int container, int option, double x, double y) {
        double down = sunk(item, container, option, x, y);
        laid.container[item] = container;
        laid.option[item] = option;
        laid.x[item] = x;
        laid.y[item] = down;
        scorer.add(item, laid);
        rows.get(container).add(down + problem.options.get(option).heightMm() + problem.gapMm());
    }

    /** How far down it can go from a free position, in halved strides. */
    private double sunk(int item, int container, int option, double x, double from) {
        InnerFit fit = scorer.innerFit(container, option);
        double at = from;
        double stride = problem.options.get(option).heightMm() / 4;
        while (stride > NEAR_MM) {
            double to = fit.nearestY(at - stride, scorer.limit[container]);
            if (to < at && scorer.met(item, container, option, x, to) == OverlapScorer.NOTHING) {
                at = to;
            } else {
                stride /= 2;
            }
        }
        return at;
    }
}
