package secondbolt.sewing.seam;

import java.util.List;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;

/**
 * All there is to sew.
 *
 * @param joins those of the pattern, in her order
 * @param layers more layers of an edge than its joins take
 * @param darts in the order of the pieces
 * @param hems in her order
 * @param own lines that she tells of
 * @param stays curved edges that are stay-stitched
 * @param untold edges that no join, no hem and no line of hers tells of
 */
public record SewnLines(
        List<JoinLine> joins,
        List<SewnLine> layers,
        List<SewnLine> darts,
        List<HemLine> hems,
        List<SewnLine> own,
        List<SewnLine> stays,
        List<Untold> untold) {
    /** Nothing to sew. */
    public static final SewnLines NOTHING =
            new SewnLines(
                    List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    /** Copies the lists. */
    public SewnLines {
        joins = List.copyOf(joins);
        layers = List.copyOf(layers);
        darts = List.copyOf(darts);
        hems = List.copyOf(hems);
        own = List.copyOf(own);
        stays = List.copyOf(stays);
        untold = List.copyOf(untold);
    }

    /**
     * A hem as it is sewn.
     *
     * @param line how long it is
     * @param isByHandOrBlind whether its stitches catch the cloth without showing
     * @param hasRawEdge whether its edge lies flat and must be neatened
     */
    public record HemLine(SewnLine line, boolean isByHandOrBlind, boolean hasRawEdge) {}

    /**
     * Edges of a piece that nobody has told of.
     *
     * @param edge which
     * @param all how long they are on all copies together
     */
    public record Untold(PieceEdge edge, Length all) {}

    /** How long the untold edges are together. */
    public Length untoldLength() {
        return untold.stream().map(Untold::all).reduce(Length.ZERO, Length::plus);
    }
}
