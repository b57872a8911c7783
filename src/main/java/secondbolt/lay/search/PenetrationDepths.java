package secondbolt.lay.search;

import java.util.Optional;
import secondbolt.lay.nofit.NoFitRegion;
import secondbolt.lay.nofit.PairNoFitRegion;

/**
 * How deeply items penetrate each other and what is outside of a container, in millimetres: the
 * no-fit regions of a problem, at hand for one worker. It is used by one thread.
 */
final class PenetrationDepths {
    private final Problem problem;
    private final int shapes;
    private final int[] shapeOf;
    private final double[] widths;
    private final double[] heights;
    private final PairNoFitRegion[] pairs;
    private final NoFitRegion[] outside;
    private final boolean[] isOutsideKnown;
    private final int grades;

    PenetrationDepths(Problem problem) {
        this.problem = problem;
        int options = problem.options.size();
        shapes = problem.shapes();
        grades = problem.grades();
        shapeOf = new int[options];
        widths = new double[options];
        heights = new double[options];
        for (int i = 0; i < options; i++) {
            PlacementOption option = problem.options.get(i);
            shapeOf[i] = option.shapeNumber();
            widths[i] = option.widthMm();
            heights[i] = option.heightMm();
        }
        pairs = new PairNoFitRegion[shapes * shapes];
        int count = problem.containers.size() * grades * shapes;
        outside = new NoFitRegion[count];
        isOutsideKnown = new boolean[count];
    }

    double widthMm(int option) {
        return widths[option];
    }

    double heightMm(int option) {
        return heights[option];
    }

    /**
     * How far an item in a second option must move to come free of one in a first; zero if it is.
     *
     * @param x how far across it lies from the first
     * @param y how far along
     */
    double depthMm(int first, int second, double x, double y) {
        return pair(first, second).depthMm(x, y);
    }

    /** Where an item in a second option must not be, one in a first at the origin. */
    PairNoFitRegion pair(int first, int second) {
        int at = shapeOf[first] * shapes + shapeOf[second];
        return pairs[at] == null ? find(at) : pairs[at];
    }

    /** For two shapes one region is made, whichever comes first. */
    private PairNoFitRegion find(int at) {
        int first = at / shapes;
        int second = at % shapes;
        pairs[at] =
                first <= second
                        ? problem.between(first, second)
                        : problem.between(second, first).swapped();
        return pairs[at];
    }

    /** How far an item in an option must move to lie on the sound part of a container. */
    double outsideDepthMm(int container, int grade, int option, double x, double y) {
        int at = (container * grades + grade) * shapes + shapeOf[option];
        if (!isOutsideKnown[at]) {
            Optional<NoFitRegion> region = problem.outside(container, shapeOf[option], grade);
            outside[at] = region.orElse(null);
            isOutsideKnown[at] = true;
        }
        return outside[at] == null ? 0 : outside[at].depthMm(x, y);
    }
}
