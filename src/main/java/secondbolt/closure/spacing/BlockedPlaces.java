package secondbolt.closure.spacing;

import java.util.Arrays;

/** The places where a hole cannot be stitched, looked up once. */
final class BlockedPlaces {
    private final boolean[][] table;

    BlockedPlaces(SpacingProblem problem) {
        table = new boolean[problem.count()][problem.last().to() + 1];
        for (int number = 0; number < problem.count(); number++) {
            for (Zone zone : problem.blocked().get(number)) {
                int from = Math.max(0, zone.from());
                int to = Math.min(table[number].length, zone.to() + 1);
                Arrays.fill(table[number], Math.min(from, to), Math.max(0, to), true);
            }
        }
    }

    /** 1 if the hole of a fastener, counted from 0, must be worked by hand there, else 0. */
    int byHand(int number, int place) {
        return table[number][place] ? 1 : 0;
    }
}
