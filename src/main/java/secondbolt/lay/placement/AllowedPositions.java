package secondbolt.lay.placement;

/**
 * The allowed positions of an item's origin along one axis of its container: an interval, and in it
 * every position, or equal steps only, such as the repeat of a check.
 *
 * @param leastMm the lower end of the interval; minus infinity if there is none
 * @param mostMm the upper end; infinity if there is none; below the lower one, nothing is allowed
 * @param fromMm any one of the steps
 * @param everyMm from one step to the next; zero if every position is allowed
 */
public record AllowedPositions(double leastMm, double mostMm, double fromMm, double everyMm) {
    /** Every position. */
    public static final AllowedPositions ANY =
            between(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    private static final double DUST_MM = 1e-6;

    /** One position only. */
    public static AllowedPositions at(double positionMm) {
        return between(positionMm, positionMm);
    }

    /** Every position of an interval, its ends among them. */
    public static AllowedPositions between(double leastMm, double mostMm) {
        return new AllowedPositions(leastMm, mostMm, 0, 0);
    }

    /** Equal steps without end. */
    public static AllowedPositions steps(double fromMm, double everyMm) {
        return new AllowedPositions(
                Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, fromMm, everyMm);
    }

    /** Those of them that are within an interval. */
    public AllowedPositions within(double lowMm, double highMm) {
        return new AllowedPositions(
                Math.max(leastMm, lowMm), Math.min(mostMm, highMm), fromMm, everyMm);
    }

    /**
     * Whether any position is allowed.
     *
     * @param lastMm positions beyond it do not count
     */
    public boolean isAny(double lastMm) {
        double most = Math.min(mostMm, lastMm);
        return (everyMm > 0 ? lastStep(most) : most) >= leastMm - DUST_MM;
    }

    private double lastStep(double most) {
        return fromMm + Math.floor((most - fromMm) / everyMm + DUST_MM) * everyMm;
    }

    /**
     * The allowed position nearest to one; only if any is allowed.
     *
     * @param lastMm positions beyond it do not count
     */
    public double nearest(double positionMm, double lastMm) {
        double most = Math.min(mostMm, lastMm);
        if (everyMm <= 0) {
            return Math.max(leastMm, Math.min(most, positionMm));
        }
        double step = fromMm + Math.rint((positionMm - fromMm) / everyMm) * everyMm;
        if (step < leastMm - DUST_MM) {
            return fromMm + Math.ceil((leastMm - fromMm) / everyMm - DUST_MM) * everyMm;
        }
        return step > most + DUST_MM ? lastStep(most) : step;
    }

    /**
     * Whether a position is one of these, steps heeded; one that is not finite never is.
     *
     * @param toleranceMm how far off it may be, zero or more
     */
    public boolean holds(double positionMm, double toleranceMm) {
        double steps = everyMm > 0 ? (positionMm - fromMm) / everyMm : 0;
        return Double.isFinite(positionMm)
                && positionMm >= leastMm - toleranceMm
                && positionMm <= mostMm + toleranceMm
                && Math.abs(steps - Math.rint(steps)) * everyMm <= toleranceMm;
    }

    /**
     * How far outside of the interval a position is, zero or more; steps are not heeded.
     *
     * @param lastMm the interval is cut off there; what is then missing of it counts as well
     */
    public double beyondMm(double positionMm, double lastMm) {
        double most = Math.min(mostMm, lastMm);
        double outside = Math.max(leastMm - positionMm, positionMm - Math.max(leastMm, most));
        return Math.max(0, outside) + Math.max(0, leastMm - most);
    }
}
