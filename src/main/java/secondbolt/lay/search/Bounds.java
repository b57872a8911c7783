package secondbolt.lay.search;

/**
 * Where the corner of a shape's box may lie on a ground: within the ground, and on the rails of its
 * way. Along, the ground may be shortened; a shape with one place only does not heed that.
 *
 * @param mayUse whether it may lie on this ground so at all
 * @param across from left to right
 * @param along from low to the ground's full height
 * @param heightMm of the shape
 */
record Bounds(boolean mayUse, Rail across, Rail along, double heightMm) {
    static Bounds of(Ground ground, int number, Stance stance) {
        Orientation lies = stance.lies();
        Way way = stance.way();
        return new Bounds(
                way.mayUse(number),
                way.across()
                        .moved(ground.originX() + lies.leftMm())
                        .within(ground.left(), ground.right() - lies.widthMm()),
                way.along()
                        .moved(ground.originY() + lies.lowMm())
                        .within(ground.low(), ground.high() - lies.heightMm()),
                lies.heightMm());
    }

    /** Whether there is any place on the ground, used up to a height. */
    boolean hasPlace(double highMm) {
        return mayUse && across.hasPlace(Double.POSITIVE_INFINITY) && along.hasPlace(last(highMm));
    }

    /** Whether there is one place along only. */
    boolean isFixed() {
        return along.leastMm() >= along.mostMm();
    }

    private double last(double highMm) {
        return isFixed() ? along.mostMm() : highMm - heightMm;
    }

    /** The nearest place across. */
    double withinX(double x) {
        return across.nearest(x, Double.POSITIVE_INFINITY);
    }

    /** The nearest place along on the ground, used up to a height. */
    double withinY(double y, double highMm) {
        return along.nearest(y, last(highMm));
    }

    /**
     * The least that the ground must be used up to for there to be a place; without end if there is
     * none, or if the shape does not heed it, nothing.
     */
    double leastHighMm() {
        if (!mayUse
                || !across.hasPlace(Double.POSITIVE_INFINITY)
                || !along.hasPlace(along.mostMm())) {
            return Double.POSITIVE_INFINITY;
        }
        return isFixed()
                ? Double.NEGATIVE_INFINITY
                : along.nearest(along.leastMm(), along.mostMm()) + heightMm;
    }

    /** A place across, a share of the way from the first to the last. */
    double atShareX(double share) {
        return withinX(across.leastMm() + share * (across.mostMm() - across.leastMm()));
    }

    /** A place along likewise. */
    double atShareY(double share, double highMm) {
        double most = Math.min(along.mostMm(), last(highMm));
        return withinY(along.leastMm() + share * (most - along.leastMm()), highMm);
    }

    /** How far a place is outside of the bounds, steps aside; above zero if they leave none. */
    double beyondMm(double x, double y, double highMm) {
        double beyond =
                across.beyondMm(x, Double.POSITIVE_INFINITY) + along.beyondMm(y, last(highMm));
        return beyond > 0 || hasPlace(highMm) ? beyond : heightMm;
    }
}
