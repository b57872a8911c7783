package secondbolt.closure;

import java.util.List;
import java.util.Optional;
import secondbolt.measure.Length;

/**
 * A closure worked out.
 *
 * @param name the maker's name for it
 * @param closure as written
 * @param layout its placket and what lies on it
 * @param solved where the fasteners come
 * @param marks a mark for each fastener, from the top
 * @param added how many more than told the largest gap asked for
 * @param remedies what would meet all that is asked, where something is not met
 * @param advice how other counts would come out
 */
public record ClosureResult(
        String name,
        Closure closure,
        Layout layout,
        Solved solved,
        List<Mark> marks,
        int added,
        List<String> remedies,
        List<Advice> advice) {
    /** Copies the lists. */
    public ClosureResult {
        marks = List.copyOf(marks);
        remedies = List.copyOf(remedies);
        advice = List.copyOf(advice);
    }

    /**
     * Where one fastener and its hole come.
     *
     * @param number from the top, from 1
     * @param fromTop from the top edge to its centre
     * @param holes which way its hole runs
     * @param start where the hole begins: from the top if upright, from the line of the row if
     *     level, negative toward the edge
     * @param end where it ends, measured likewise
     * @param byHand whether it must be worked by hand
     * @param why what it meets, if it must
     */
    public record Mark(
            int number,
            Length fromTop,
            Fastening.Holes holes,
            Length start,
            Length end,
            boolean byHand,
            Optional<String> why) {
        boolean isUpright() {
            return holes == Fastening.Holes.UPRIGHT;
        }
    }

    /**
     * How another count would come out.
     *
     * @param count how many
     * @param solved how they would lie
     */
    public record Advice(int count, Solved solved) {}

    /** How long the placket is. */
    public Length length() {
        return layout.length();
    }

    /** The mean gap; nothing for one alone. */
    public Optional<Length> gap() {
        return solved.gap();
    }

    /** How long each hole is, between its bars. */
    public Length hole() {
        return closure.fastening().hole();
    }

    /** How many there are in all, to buy. */
    int toBuy() {
        return marks.size() * (closure.overlap().rowsApart().isPresent() ? 2 : 1);
    }
}
