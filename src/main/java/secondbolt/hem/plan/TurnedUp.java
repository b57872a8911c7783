package secondbolt.hem.plan;

import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;

/**
 * Cloth turned up along an edge, in so many layers that a hole cannot be stitched through them: a
 * placket that ends there ends in bulk. Common practice, no source.
 *
 * @param what in the maker's words
 * @param edge which
 * @param depth from the fold to where it is sewn, more than zero
 */
public record TurnedUp(String what, PieceEdge edge, Length depth) {
    /** Checks the depth. */
    public TurnedUp {
        if (!depth.isPositive()) {
            throw new IllegalArgumentException("depth must be more than zero: " + depth);
        }
    }
}
