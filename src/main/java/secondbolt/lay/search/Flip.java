package secondbolt.lay.search;

/**
 * A mirroring across, along, or both, which is half a turn.
 *
 * @param across whether left and right change places
 * @param along whether low and high do
 */
record Flip(boolean across, boolean along) {
    static final Flip NONE = new Flip(false, false);

    /** One after the other, in either order. */
    Flip with(Flip other) {
        return new Flip(across != other.across, along != other.along);
    }

    /** A place across in a box so wide. */
    double x(double x, double widthMm) {
        return across ? widthMm - x : x;
    }

    /** A place along in a box so high. */
    double y(double y, double heightMm) {
        return along ? heightMm - y : y;
    }
}
