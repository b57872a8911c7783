package secondbolt.cutting;

import java.util.List;

/**
 * What the page of the pieces shows, as ready text.
 *
 * @param rights a sentence on whose the pattern is; empty if there is nothing to say
 * @param allowance a sentence on the seam allowance
 * @param pieces one for each drawn piece
 * @param taped the names of those known by tape only; empty if there is none
 */
public record CuttingView(String rights, String allowance, List<One> pieces, String taped) {
    /**
     * One piece.
     *
     * @param name the maker's name for it
     * @param picture the name of its picture
     * @param caption what the picture shows
     * @param cut what to cut
     * @param size of the cut piece
     * @param edges one row for each edge
     */
    public record One(
            String name,
            String picture,
            String caption,
            String cut,
            String size,
            List<Row> edges) {}

    /**
     * An edge.
     *
     * @param edge its name
     * @param allowance its width on the project's tape
     * @param other on the other tape
     * @param kind what becomes of it
     */
    public record Row(String edge, String allowance, String other, String kind) {}
}
