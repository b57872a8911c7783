package secondbolt.shape.cut;

import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/**
 * What a turned-up edge meets at one of its ends.
 *
 * @param line the neighbour, from the corner on
 * @param depthMm how deep it is turned up; zero if it is not
 * @param isMitred whether both end on a mitre
 */
record TurnedSide(EdgeLine line, double depthMm, boolean isMitred) {
    /**
     * The line on which the edge ends, from the corner on.
     *
     * @param here the corner, on the edge
     * @param way 1 if the piece lies to the right of the edge, -1 if to its left
     * @param edgeMm how deep the edge is turned up
     * @param isEnd whether it is the edge's end, not its start
     */
    Run run(TurnedPart.Sample here, int way, double edgeMm, boolean isEnd) {
        if (!isMitred) {
            return Mitre.run(line);
        }
        // It runs away from the corner: the outline runs that way at the end, back at the start.
        Point away = line.directionAt(0);
        Point there = isEnd ? away : new Point(-away.xMm(), -away.yMm());
        return Mitre.between(
                here, new TurnedPart.Sample(here.at(), there, 0), way, edgeMm, depthMm);
    }
}
