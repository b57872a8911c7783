package secondbolt.closure;

import java.util.List;

/**
 * What the closure page shows, as ready text.
 *
 * @param closures one for each closure that could be worked out
 */
public record ClosureView(List<One> closures) {
    /**
     * One closure.
     *
     * @param name the maker's name for it
     * @param picture the name of its picture
     * @param seen what the picture shows
     * @param facts label and value, and the value on the other tape or nothing
     * @param marks one row for each button
     */
    public record One(
            String name, String picture, String seen, List<Fact> facts, List<Row> marks) {}

    /**
     * A fact.
     *
     * @param label what it is
     * @param value on the project's tape
     * @param other on the other tape; empty if there is none
     */
    public record Fact(String label, String value, String other) {}

    /**
     * A row of the table of marks.
     *
     * @param number of the button
     * @param fromTop on the project's tape
     * @param other on the other tape
     * @param start where its hole begins
     * @param end where its hole ends
     */
    public record Row(int number, String fromTop, String other, String start, String end) {}
}
