package secondbolt.shape;

/**
 * A point of the plane, in millimetres: x across to the right, y along downwards.
 *
 * @param xMm across
 * @param yMm along
 */
public record Point(double xMm, double yMm) {
    /** The origin. */
    public static final Point ORIGIN = new Point(0, 0);

    /** This moved by so much across and along. */
    public Point moved(double acrossMm, double alongMm) {
        return new Point(xMm + acrossMm, yMm + alongMm);
    }

    /** How far it is to the other. */
    public double distanceMm(Point other) {
        return Math.hypot(other.xMm - xMm, other.yMm - yMm);
    }
}
