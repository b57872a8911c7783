package secondbolt.closure;

import java.util.List;
import java.util.Optional;
import secondbolt.measure.Length;

/**
 * A closure worked out.
 *
 * @param name the maker's name for it
 * @param closure as written
 * @param length of the placket
 * @param hole how long each hole is, between its bars
 * @param gap from button to button; none for one alone
 * @param marks a mark for each button, from the top
 */
public record ClosureResult(
        String name,
        Closure closure,
        Length length,
        Length hole,
        Optional<Length> gap,
        List<ButtonMark> marks) {
    /** Copies the marks. */
    public ClosureResult {
        marks = List.copyOf(marks);
    }

    /**
     * Where one button and its hole come.
     *
     * @param number from the top, from 1
     * @param fromTop from the top edge to the button's centre, on the centre line
     * @param start where the hole begins: from the top if upright, from the centre line if level,
     *     negative toward the edge
     * @param end where it ends, measured likewise
     */
    public record ButtonMark(int number, Length fromTop, Length start, Length end) {}
}
