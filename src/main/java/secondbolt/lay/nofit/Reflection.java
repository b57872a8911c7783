package secondbolt.lay.nofit;

/**
 * A reflection across, along, or both, which is half a turn.
 *
 * @param across whether left and right change places
 * @param along whether low and high do
 */
public record Reflection(boolean across, boolean along) {
    static final Reflection NONE = new Reflection(false, false);

    /** One after the other, in either order. */
    Reflection with(Reflection other) {
        return new Reflection(across != other.across, along != other.along);
    }

    /** A position across, reflected within a box so wide. */
    double x(double x, double widthMm) {
        return across ? widthMm - x : x;
    }

    /** A position along, reflected within a box so high. */
    double y(double y, double heightMm) {
        return along ? heightMm - y : y;
    }
}
