package secondbolt.lay.nofit;

import secondbolt.lay.placement.AllowedPositions;
import secondbolt.lay.placement.PlacementRule;

/**
 * The inner fit of a shape in a container: the positions of the corner of its box at which the box
 * is within that of the container, and which its rule allows. Along, the container may be used up
 * to a height only; a shape with one position along does not heed that.
 *
 * @param isAllowed whether the rule allows the container at all
 * @param across positions in the plane of the search, from left to right
 * @param along positions from low to the container's full height
 * @param heightMm of the shape
 */
public record InnerFit(
        boolean isAllowed, AllowedPositions across, AllowedPositions along, double heightMm) {
    /**
     * The inner fit of a shape.
     *
     * @param number of the container, from 0
     */
    public static InnerFit of(
            PlaneContainer container, int number, OrientedShape shape, PlacementRule rule) {
        return new InnerFit(
                rule.allows(number),
                moved(rule.across(), container.originX() + shape.leftMm())
                        .within(container.left(), container.right() - shape.widthMm()),
                moved(rule.along(), container.originY() + shape.lowMm())
                        .within(container.low(), container.high() - shape.heightMm()),
                shape.heightMm());
    }

    /** The same positions counted from elsewhere, on the grid as all positions are. */
    private static AllowedPositions moved(AllowedPositions positions, double byMm) {
        return new AllowedPositions(
                CoordinateGrid.rounded(positions.leastMm() + byMm),
                CoordinateGrid.rounded(positions.mostMm() + byMm),
                CoordinateGrid.rounded(positions.fromMm() + byMm),
                CoordinateGrid.rounded(positions.everyMm()));
    }

    /** Whether there is any position in the container used up to a height. */
    public boolean hasPosition(double highMm) {
        return isAllowed && across.isAny(Double.POSITIVE_INFINITY) && along.isAny(last(highMm));
    }

    /** Whether there is one position along only. */
    public boolean isFixed() {
        return along.leastMm() >= along.mostMm();
    }

    private double last(double highMm) {
        return isFixed() ? along.mostMm() : highMm - heightMm;
    }

    /** The nearest position across. */
    public double nearestX(double x) {
        return across.nearest(x, Double.POSITIVE_INFINITY);
    }

    /** The nearest position along in the container used up to a height. */
    public double nearestY(double y, double highMm) {
        return along.nearest(y, last(highMm));
    }

    /**
     * The least height the container must be used up to for there to be a position: infinity if
     * there is none at any height, minus infinity if the shape does not heed the height.
     */
    public double leastHighMm() {
        if (!isAllowed || !across.isAny(Double.POSITIVE_INFINITY) || !along.isAny(along.mostMm())) {
            return Double.POSITIVE_INFINITY;
        }
        return isFixed()
                ? Double.NEGATIVE_INFINITY
                : along.nearest(along.leastMm(), along.mostMm()) + heightMm;
    }

    /**
     * The position across that is nearest to a share of the way from the first to the last.
     *
     * @param share from 0 to 1
     */
    public double atShareX(double share) {
        return nearestX(across.leastMm() + share * (across.mostMm() - across.leastMm()));
    }

    /**
     * The position along likewise, in the container used up to a height.
     *
     * @param share from 0 to 1
     */
    public double atShareY(double share, double highMm) {
        double most = Math.min(along.mostMm(), last(highMm));
        return nearestY(along.leastMm() + share * (most - along.leastMm()), highMm);
    }

    /**
     * How far outside a place is, across and along together; steps are not heeded. Above zero
     * everywhere if there is no position at all.
     */
    public double beyondMm(double x, double y, double highMm) {
        double beyond =
                across.beyondMm(x, Double.POSITIVE_INFINITY) + along.beyondMm(y, last(highMm));
        return beyond > 0 || hasPosition(highMm) ? beyond : heightMm;
    }
}
