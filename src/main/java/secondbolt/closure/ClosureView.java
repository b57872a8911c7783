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
     * @param one what a single fastener is called
     * @param hasHoles whether holes are worked
     * @param picture the name of its picture
     * @param seen what the picture shows
     * @param facts label and value, and the value on the other tape or nothing
     * @param marks one row for each fastener
     * @param counts how other counts would come out
     * @param usual what is usual, in a sentence
     */
    public record One(
            String name,
            String one,
            boolean hasHoles,
            String picture,
            String seen,
            List<Fact> facts,
            List<Row> marks,
            List<Count> counts,
            String usual) {}

    /**
     * A fact.
     *
     * @param label what it is
     * @param value on the project's tape
     * @param other on the other tape; empty if there is none
     */
    public record Fact(String label, String value, String other) {}

    /**
     * A fastener and its hole.
     *
     * @param number from the top
     * @param fromTop to its centre, on the project's tape
     * @param other the same on the other tape
     * @param start where the hole begins
     * @param end where it ends
     * @param note what it meets, or that it is worked by hand; may be empty
     */
    public record Row(
            int number, String fromTop, String other, String start, String end, String note) {}

    /**
     * Another count.
     *
     * @param count how many
     * @param gap the mean gap
     * @param other the same on the other tape
     * @param uneven by how much a gap differs most
     * @param conflicts what would not be met; empty if nothing
     * @param taken whether it is the one worked out
     */
    public record Count(
            int count, String gap, String other, String uneven, String conflicts, boolean taken) {}
}
