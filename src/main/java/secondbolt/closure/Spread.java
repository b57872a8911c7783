package secondbolt.closure;

import java.util.List;
import java.util.Optional;
import secondbolt.file.Placed;
import secondbolt.measure.Length;

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
public record Spread(
        Optional<Integer> count,
        Optional<Length> largestGap,
        Reach first,
        Optional<Reach> last,
        List<Spot> meets,
        List<Spot> bulks) {
    /** Copies the lists. */
    public Spread {
        meets = List.copyOf(meets);
        bulks = List.copyOf(bulks);
        if (count.isEmpty() && largestGap.isEmpty()) {
            throw new IllegalArgumentException("count or largest gap must be told");
        }
    }

    /**
     * A length, or any from one to another.
     *
     * @param from the shortest
     * @param to the longest
     */
    public record Reach(Length from, Length to) {
        /** One length alone. */
        public static Reach of(Length length) {
            return new Reach(length, length);
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
    public record Spot(Placed<At> at, String why, Length clear) {}

    /**
     * Where a place is: one of the two is told.
     *
     * @param printed from the top of the placket, as the pattern prints it
     * @param mark the mark it is level with
     */
    public record At(Optional<Length> printed, Optional<Mark> mark) {}

    /**
     * A mark of a piece.
     *
     * @param piece the piece's name
     * @param what the mark's name
     */
    public record Mark(String piece, String what) {
        /** As written. */
        @Override
        public String toString() {
            return piece + "." + what;
        }
    }
}
