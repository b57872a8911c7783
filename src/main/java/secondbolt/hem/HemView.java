package secondbolt.hem;

import java.util.List;

/**
 * What the hem page shows, as ready text.
 *
 * @param hems one for each, in the maker's order
 */
public record HemView(List<One> hems) {
    /**
     * One hem.
     *
     * @param name the maker's name for it
     * @param picture the name of its picture; empty if there is none
     * @param caption of the picture
     * @param facts label and value, and the value on the other tape or nothing
     * @param edges one row for each edge
     * @param steps how it is made, in order
     */
    public record One(
            String name,
            String picture,
            String caption,
            List<Fact> facts,
            List<Row> edges,
            List<String> steps) {}

    /**
     * A fact.
     *
     * @param label what it is
     * @param value on the project's tape
     * @param other on the other tape; empty if there is none
     */
    public record Fact(String label, String value, String other) {}

    /**
     * A length on both tapes.
     *
     * @param own on the project's tape
     * @param other on the other; empty if there is none
     */
    public record Both(String own, String other) {}

    /**
     * A row of the table of edges.
     *
     * @param edge which
     * @param shape what its fold looks like
     * @param times how often it goes round
     * @param fold its fold, once
     * @param cut the edge that is sewn down, once
     * @param lands the line it lands on, once
     * @param longer how much longer the first is, or shorter, with the share
     * @param advice what is done with it
     */
    public record Row(
            String edge,
            String shape,
            String times,
            Both fold,
            Both cut,
            Both lands,
            Both longer,
            String advice) {}
}
