package secondbolt.closure.spacing;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What is asked of a row of fasteners; places and gaps are whole steps of a grid.
 *
 * @param count how many, 2 or more
 * @param first where the first may be
 * @param last where the last may be
 * @param least the narrowest gap, 1 or more
 * @param widest the widest gap
 * @param meets places that must have one each, in any order
 * @param blocked for each fastener in order, where its hole cannot be stitched
 */
public record SpacingProblem(
        int count,
        Zone first,
        Zone last,
        int least,
        int widest,
        List<Integer> meets,
        List<List<Zone>> blocked) {
    /** Checks the numbers and copies the lists. */
    public SpacingProblem {
        if (count < 2 || least < 1 || blocked.size() != count) {
            throw new IllegalArgumentException(
                    "count must be 2 or more with as many lists of blocked zones, least 1 or more:"
                            + count
                            + ", "
                            + blocked.size()
                            + ", "
                            + least);
        }
        meets = meets.stream().sorted().distinct().toList();
        blocked = blocked.stream().map(List::copyOf).toList();
    }

    /** Whether the hole of a fastener, counted from 0, cannot be stitched at a place. */
    public boolean isBlocked(int number, int place) {
        return blocked.get(number).stream().anyMatch(zone -> zone.holds(place));
    }

    /** The fasteners, counted from 0, whose holes cannot be stitched at these places. */
    public List<Integer> blockedAt(List<Integer> places) {
        return IntStream.range(0, places.size())
                .filter(i -> isBlocked(i, places.get(i)))
                .boxed()
                .toList();
    }
}
