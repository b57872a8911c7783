package secondbolt.sewing.plan;

import java.util.List;
import java.util.Optional;
import secondbolt.file.value.Placed;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;

/**
 * Stitching that no join and no hem tells of: topstitching, a pocket sewn on, a casing.
 *
 * @param what in the maker's words
 * @param along edges it runs along, on every copy that is cut; empty if its length is told instead
 * @param length of one row in all, if told
 * @param rows how many rows; none where the edge needs no stitching at all
 * @param stitch with which; the seams' own if not told
 * @param colour of its thread; the seams' own if not told
 */
public record OwnLine(
        String what,
        List<Placed<PieceEdge>> along,
        Optional<Length> length,
        int rows,
        Optional<Stitch> stitch,
        Optional<String> colour) {
    /** Copies the edges. */
    public OwnLine {
        along = List.copyOf(along);
    }
}
