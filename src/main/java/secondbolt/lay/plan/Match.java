package secondbolt.lay.plan;

import secondbolt.file.value.Placed;
import secondbolt.garment.PieceEdge;

/**
 * Two places of two pieces at which stripes or checks run on from one into the other.
 *
 * @param first an edge or a mark, with the place it is written at
 * @param second the one it meets
 */
public record Match(Placed<PieceEdge> first, Placed<PieceEdge> second) {
    /** As a sheet says it. */
    public String words() {
        return first.value().words() + " with " + second.value().words();
    }
}
