package secondbolt.closure.spacing;

/** Which holes cannot be stitched where, looked up once. */
final class Blocked {
    private final boolean[][] table;

    Blocked(SpacingProblem problem) {
        table = new boolean[problem.count()][problem.last().to() + 1];
        for (int number = 0; number < problem.count(); number++) {
            for (int place = 0; place < table[number].length; place++) {
                table[number][place] = problem.isBlocked(number, place);
            }
        }
    }

    /** 1 if the hole of a fastener, counted from 0, must be worked by hand there, else 0. */
    int byHand(int number, int place) {
        return table[number][place] ? 1 : 0;
    }
}
