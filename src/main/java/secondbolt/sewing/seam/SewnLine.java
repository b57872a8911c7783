package secondbolt.sewing.seam;

import java.util.Optional;
import java.util.Set;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Role;
import secondbolt.measure.Length;

/**
 * A line that is sewn.
 *
 * @param kind what it is
 * @param what as a page names it
 * @param role of the cloth whose thread it takes
 * @param edges it lies along
 * @param once how long one of them is; nothing if that is not known
 * @param times how often it is sewn
 */
public record SewnLine(
        Kind kind, String what, Role role, Set<PieceEdge> edges, Optional<Length> once, int times) {
    /** Copies the edges. */
    public SewnLine {
        edges = Set.copyOf(edges);
    }

    /** What a line is. */
    public enum Kind {
        /** A join of the pattern. */
        SEAM("join"),
        /** More layers of an edge than its joins take: turned in and sewn down. */
        SECOND_LAYER("second layer"),
        /** A dart. */
        DART("dart"),
        /** A hem. */
        HEM("hem"),
        /** Stay-stitching. */
        STAY("stay-stitching"),
        /** A line that the maker tells of. */
        OWN("your own line");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** As a page says it. */
        public String word() {
            return word;
        }
    }

    /** All of them together, if it is known. */
    public Optional<Length> all() {
        return once.map(length -> length.times(times));
    }

    /** Whether it is sewn at all, and its length is not known. */
    public boolean isOpen() {
        return times > 0 && once.isEmpty();
    }
}
