package secondbolt.lay.nofit;

/**
 * The no-fit region of a pair of shapes, the first at the origin: that of their reference shapes,
 * or its mirror image.
 */
public final class PairNoFitRegion {
    private final NoFitRegion region;
    private final double acrossX;
    private final double fromX;
    private final double acrossY;
    private final double fromY;

    PairNoFitRegion(
            NoFitRegion region, Reflection reflection, OrientedShape first, OrientedShape second) {
        this.region = region;
        acrossX = reflection.across() ? -1 : 1;
        fromX = reflection.across() ? first.widthMm() - second.widthMm() : 0;
        acrossY = reflection.along() ? -1 : 1;
        fromY = reflection.along() ? first.heightMm() - second.heightMm() : 0;
    }

    private PairNoFitRegion(PairNoFitRegion other) {
        region = other.region;
        acrossX = -other.acrossX;
        fromX = other.fromX;
        acrossY = -other.acrossY;
        fromY = other.fromY;
    }

    /** The region of the pair the other way about: the second shape at the origin. */
    public PairNoFitRegion swapped() {
        return new PairNoFitRegion(this);
    }

    /**
     * The penetration depth in millimetres: how far the second shape must move to come free of the
     * first; zero where they do not overlap.
     *
     * @param x how far across the second lies from the first
     * @param y how far along
     */
    public double depthMm(double x, double y) {
        return region.depthMm(fromX + acrossX * x, fromY + acrossY * y);
    }

    /**
     * How far across the second lies from the first where they touch, one of several.
     *
     * @param y how far along it lies from it
     * @param share which of them, from 0 to below 1
     * @return not a number if they touch nowhere so far along
     */
    public double touchX(double y, double share) {
        return acrossX * (region.touchX(fromY + acrossY * y, share) - fromX);
    }

    /** The farthest that the second lies to the left of the first where they touch, likewise. */
    public double leftmostTouchX(double y) {
        return acrossX * (region.touchX(fromY + acrossY * y, acrossX < 0) - fromX);
    }

    /** How far along the second lies from the first where they touch, likewise. */
    public double touchY(double x, double share) {
        return acrossY * (region.touchY(fromX + acrossX * x, share) - fromY);
    }
}
