package secondbolt.trim.guide;

import secondbolt.garment.PieceEdge;

/** How often an edge is counted, in words and as written. */
public final class Counted {
    private Counted() {}

    /** {@code once}, {@code twice}, {@code 3 times}. */
    public static String times(int count) {
        return switch (count) {
            case 1 -> "once";
            case 2 -> "twice";
            default -> count + " times";
        };
    }

    /** An edge as it is written in a sum: {@code 2 front.neckline}. */
    public static String term(int count, PieceEdge edge) {
        return count == 1 ? edge.toString() : count + " " + edge;
    }
}
