package secondbolt.lay.search;

import java.util.Optional;

/**
 * How deeply stances lie in each other and off the ground: what a problem knows of that, at hand
 * for one worker. Not for sharing.
 */
final class Neighbours {
    private final Problem problem;
    private final int shapes;
    private final int[] shapeOf;
    private final double[] widths;
    private final double[] heights;
    private final Beside[] beside;
    private final Field[] rooms;
    private final boolean[] hasRoomField;
    private final int grades;

    Neighbours(Problem problem) {
        this.problem = problem;
        int stances = problem.stances.size();
        shapes = problem.shapes();
        grades = problem.grades();
        shapeOf = new int[stances];
        widths = new double[stances];
        heights = new double[stances];
        for (int i = 0; i < stances; i++) {
            Stance stance = problem.stances.get(i);
            shapeOf[i] = stance.shape();
            widths[i] = stance.lies().widthMm();
            heights[i] = stance.lies().heightMm();
        }
        beside = new Beside[shapes * shapes];
        int count = problem.grounds.size() * grades * shapes;
        rooms = new Field[count];
        hasRoomField = new boolean[count];
    }

    double widthMm(int stance) {
        return widths[stance];
    }

    double heightMm(int stance) {
        return heights[stance];
    }

    /**
     * How far a second stance must move to come free of a first.
     *
     * @param x how far across it lies from the first
     * @param y how far along likewise
     */
    double depthMm(int first, int second, double x, double y) {
        int at = shapeOf[first] * shapes + shapeOf[second];
        Beside known = beside[at];
        return (known == null ? find(at) : known).depthMm(x, y);
    }

    /** Of two shapes one field is made, whichever comes first. */
    private Beside find(int at) {
        int first = at / shapes;
        int second = at % shapes;
        beside[at] =
                first <= second
                        ? problem.between(first, second)
                        : problem.between(second, first).swapped();
        return beside[at];
    }

    /** How far a stance must move to lie on sound ground. */
    double offMm(int ground, int grade, int stance, double x, double y) {
        int at = (ground * grades + grade) * shapes + shapeOf[stance];
        if (!hasRoomField[at]) {
            Optional<Field> room = problem.room(ground, shapeOf[stance], grade);
            rooms[at] = room.orElse(null);
            hasRoomField[at] = true;
        }
        return rooms[at] == null ? 0 : rooms[at].depthMm(x, y);
    }
}
