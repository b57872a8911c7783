package secondbolt.textile.extent;

import java.util.Optional;
import secondbolt.file.value.Placed;
import secondbolt.garment.PieceEdge;

/**
 * A part of the cloth that pieces keep off.
 *
 * @param what in the maker's words
 * @param patch where it lies on the cloth as measured
 * @param kind what pieces may do with it
 * @param keptFor the edge of a piece that must lie on it; only with a feature
 */
public record Flaw(String what, Patch patch, Kind kind, Optional<Placed<PieceEdge>> keptFor) {
    /** What pieces may do with a flaw or a feature. */
    public enum Kind {
        /** No piece may lie on it. */
        UNSOUND,
        /** Pieces that are hidden in the finished garment may lie on it. */
        HIDDEN_USE,
        /** Sound, but wanted in no piece, or in one only: a border, an old hem. */
        FEATURE
    }
}
