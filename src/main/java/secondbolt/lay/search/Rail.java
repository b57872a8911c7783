package secondbolt.lay.search;

/**
 * Where along one axis of its bed the origin of a figure may come to lie: between two places, and
 * there anywhere or at equal steps only, such as the repeat of a check.
 *
 * @param leastMm the first place
 * @param mostMm the last place
 * @param fromMm any one of the steps
 * @param everyMm from one step to the next; zero if it may lie anywhere
 */
public record Rail(double leastMm, double mostMm, double fromMm, double everyMm) {
    /** No rule. */
    public static final Rail ANYWHERE =
            new Rail(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, 0, 0);

    private static final double DUST_MM = 1e-6;

    /** One place only. */
    public static Rail at(double placeMm) {
        return between(placeMm, placeMm);
    }

    /** Anywhere between two places. */
    public static Rail between(double leastMm, double mostMm) {
        return new Rail(leastMm, mostMm, 0, 0);
    }

    /** At equal steps. */
    public static Rail steps(double fromMm, double everyMm) {
        return new Rail(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, fromMm, everyMm);
    }

    /** The same counted from elsewhere, in whole parts of a millimetre as all places are. */
    Rail moved(double byMm) {
        return new Rail(
                Parts.rounded(leastMm + byMm),
                Parts.rounded(mostMm + byMm),
                Parts.rounded(fromMm + byMm),
                Parts.rounded(everyMm));
    }

    /** The same, and within these bounds. */
    Rail within(double lowMm, double highMm) {
        return new Rail(Math.max(leastMm, lowMm), Math.min(mostMm, highMm), fromMm, everyMm);
    }

    /** Whether there is any place, none of them beyond a last one. */
    boolean hasPlace(double lastMm) {
        double most = Math.min(mostMm, lastMm);
        return (everyMm > 0 ? lastStep(most) : most) >= leastMm - DUST_MM;
    }

    private double lastStep(double most) {
        return fromMm + Math.floor((most - fromMm) / everyMm + DUST_MM) * everyMm;
    }

    /** The place nearest to one and not beyond a last one; only if there is any. */
    double nearest(double placeMm, double lastMm) {
        double most = Math.min(mostMm, lastMm);
        if (everyMm <= 0) {
            return Math.max(leastMm, Math.min(most, placeMm));
        }
        double step = fromMm + Math.rint((placeMm - fromMm) / everyMm) * everyMm;
        if (step < leastMm - DUST_MM) {
            return fromMm + Math.ceil((leastMm - fromMm) / everyMm - DUST_MM) * everyMm;
        }
        return step > most + DUST_MM ? lastStep(most) : step;
    }

    /** How far a place is from the nearest of them, steps aside. */
    double beyondMm(double placeMm, double lastMm) {
        double most = Math.min(mostMm, lastMm);
        double outside = Math.max(leastMm - placeMm, placeMm - Math.max(leastMm, most));
        return Math.max(0, outside) + Math.max(0, leastMm - most);
    }
}
