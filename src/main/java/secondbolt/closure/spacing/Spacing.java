package secondbolt.closure.spacing;

import java.util.List;

/**
 * Where a row of fasteners comes.
 *
 * @param places in steps from the top, in order
 * @param byHand the ones, counted from 0, whose holes cannot be stitched where they are
 * @param deviation the largest difference of a gap from the mean gap, in steps
 * @param squares the sum of the squares of all differences, in square steps
 */
public record Spacing(
        List<Integer> places, List<Integer> byHand, double deviation, double squares) {
    /** Copies the lists. */
    public Spacing {
        places = List.copyOf(places);
        byHand = List.copyOf(byHand);
    }
}
