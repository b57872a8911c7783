package secondbolt.closure.strip;

import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.fastening.Overlap;
import secondbolt.garment.WornSide;

/**
 * The two sides of a closure in words, as they are drawn: seen from outside, as worn.
 *
 * @param overlap which side lies over, and where on the garment
 */
public record LapSides(Overlap overlap) {
    /**
     * Whether the side that lies over stands on the left: in front that is the wearer's right, at
     * the back her left; elsewhere the front edge, as it is on her left side.
     */
    boolean overStandsLeft() {
        WornSide left = overlap.worn() == Overlap.Worn.BACK ? WornSide.LEFT : WornSide.RIGHT;
        WornSide over = overlap.laps().over();
        return over == left || over == WornSide.FRONT;
    }

    /** The side that lies over. */
    public String over() {
        return name(overlap.laps().over());
    }

    /** The side that lies under. */
    public String under() {
        return name(overlap.laps().under());
    }

    private String name(WornSide side) {
        return switch (overlap.worn()) {
            case FRONT -> isEdge(side) ? side + " edge" : "wearer's " + side + " front";
            case BACK -> isEdge(side) ? side + " edge" : "wearer's " + side + " back";
            case SIDE -> side + " edge of the side opening";
            case CUFF -> side + " edge of the cuff";
            case SHOULDER -> side + " edge of the shoulder";
        };
    }

    /** Of two edges that lie on each other, as those of a bag, neither is on the right. */
    private static boolean isEdge(WornSide side) {
        return side == WornSide.FRONT || side == WornSide.BACK;
    }

    /** What stands on the strip of the side that lies over. */
    public static String overHeading(Fastening.Kind kind) {
        return switch (kind) {
            case BUTTONS -> "HOLES";
            case SNAPS -> "SNAPS, BALL HALVES";
            case HOOKS -> "HOOKS";
            case TIES -> "TIES";
        };
    }

    /** What stands on the strip of the side that lies under. */
    public static String underHeading(Fastening.Kind kind) {
        return switch (kind) {
            case BUTTONS -> "BUTTONS";
            case SNAPS -> "SNAPS, SOCKET HALVES";
            case HOOKS -> "EYES";
            case TIES -> "TIES, OTHER SIDE";
        };
    }
}
