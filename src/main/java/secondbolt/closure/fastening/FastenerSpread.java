package secondbolt.closure.fastening;

import java.util.List;
import java.util.Optional;
import secondbolt.file.value.Placed;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.worksheet.Convention;

/**
 * How fasteners are spread along a placket, as the maker wrote it.
 *
 * @param count how many, if told; else as many as the largest gap needs
 * @param largestGap the widest gap allowed, if told
 * @param first from the top edge to the centre of the first
 * @param last from the bottom edge to the centre of the last; not needed for one alone
 * @param meets places where one must come
 * @param bulks places where no hole can be stitched
 */
public record FastenerSpread(
        Optional<Integer> count,
        Optional<Length> largestGap,
        EndRange first,
        Optional<EndRange> last,
        List<WrittenSpot> meets,
        List<WrittenSpot> bulks) {
    /** As many as a closure can have. */
    public static final int MOST = 60;

    /** What stays free beside a seam or other bulk where nothing is told. */
    public static final Convention USUAL_CLEAR =
            Convention.common(Length.ofInches(1, 4), Length.ofMillimetres(6));

    /** Copies the lists. */
    public FastenerSpread {
        meets = List.copyOf(meets);
        bulks = List.copyOf(bulks);
        if (count.isEmpty() && largestGap.isEmpty()) {
            throw new IllegalArgumentException("count or largest gap must be told");
        }
    }

    /** The same with so many told. */
    public FastenerSpread counting(int told) {
        return new FastenerSpread(Optional.of(told), largestGap, first, last, meets, bulks);
    }

    /** The same with the first one there. */
    public FastenerSpread beginning(EndRange at) {
        return new FastenerSpread(count, largestGap, at, last, meets, bulks);
    }

    /** The same with the last one there. */
    public FastenerSpread ending(EndRange at) {
        return new FastenerSpread(count, largestGap, first, Optional.of(at), meets, bulks);
    }

    /**
     * A length, or any from one to another.
     *
     * @param from the shortest
     * @param to the longest
     */
    public record EndRange(Length from, Length to) {
        /** One length alone. */
        public static EndRange of(Length length) {
            return new EndRange(length, length);
        }

        /** Both larger by as much; smaller if it is negative. */
        public EndRange plus(Length more) {
            return new EndRange(from.plus(more), to.plus(more));
        }

        /** Halfway between the two. */
        public Length middle() {
            return from.plus(to).dividedBy(2);
        }
    }

    /**
     * A place on the placket, as written.
     *
     * @param at a length from the top as printed, or a mark of a piece
     * @param why what is there
     * @param clear what stays free on both sides of it
     */
    public record WrittenSpot(Placed<At> at, String why, Length clear) {}

    /**
     * Where a place is: one of the two is told.
     *
     * @param printed from the top of the placket, as the pattern prints it
     * @param mark the mark it is level with
     */
    public record At(Optional<Length> printed, Optional<PieceEdge> mark) {}
}
