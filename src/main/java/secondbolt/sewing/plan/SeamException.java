package secondbolt.sewing.plan;

import secondbolt.file.value.Placed;
import secondbolt.garment.PieceEdge;

/**
 * A seam that is sewn otherwise than the others.
 *
 * @param on one of its edges; every join that this edge is in is meant
 * @param choice how it is sewn
 */
public record SeamException(Placed<PieceEdge> on, SeamChoice choice) {}
