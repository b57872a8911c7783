package secondbolt.lay.search;

import java.util.List;

/**
 * One ground that shapes are put on.
 *
 * @param left of its box, where the plane holds all grounds beside each other
 * @param low of its box
 * @param right of its box
 * @param high of its box
 * @param originX where in the plane its bed's own measuring across begins
 * @param originY where in the plane its bed's own measuring along begins
 * @param outside what shapes must not lie on, in convex parts; one list for each grade of shape,
 *     the empty list if the whole box is sound
 */
record Ground(
        double left,
        double low,
        double right,
        double high,
        double originX,
        double originY,
        List<List<Convex>> outside) {
    double areaMm2() {
        return (right - left) * (high - low);
    }
}
