package secondbolt.closure.row;

import java.util.List;
import java.util.Optional;
import secondbolt.closure.placket.PlacketSpot;
import secondbolt.measure.Length;

/**
 * Fasteners placed on a placket.
 *
 * @param fromTop the centre of each, from the top edge
 * @param byHand the ones, counted from 0, whose holes cannot be stitched where they are
 * @param gap the mean from one to the next; nothing for one alone
 * @param uneven by how much the gap that differs most differs from it
 * @param unmet where none comes though one must
 */
public record FastenerRow(
        List<Length> fromTop,
        List<Integer> byHand,
        Optional<Length> gap,
        Length uneven,
        List<PlacketSpot> unmet) {
    /** A gap that differs by more than an eighth is seen. Common practice, no source. */
    static final int SEEN_PART = 8;

    /** Copies the lists. */
    public FastenerRow {
        fromTop = List.copyOf(fromTop);
        byHand = List.copyOf(byHand);
        unmet = List.copyOf(unmet);
    }

    /** Whether all that was asked is met, and evenly enough that nobody sees a difference. */
    boolean isClean() {
        return byHand.isEmpty() && unmet.isEmpty() && !isSeenUneven();
    }

    /** Whether a gap differs by so much that it is seen. */
    public boolean isSeenUneven() {
        return gap.filter(g -> uneven.isLongerThan(g.dividedBy(SEEN_PART))).isPresent();
    }
}
