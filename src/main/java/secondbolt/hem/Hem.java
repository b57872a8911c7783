package secondbolt.hem;

import java.util.List;
import java.util.Optional;
import secondbolt.file.Placed;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * A hem, as the maker wrote it.
 *
 * @param on the edges it is turned up along
 * @param depth finished, from the fold to where it is sewn; not told for a faced hem
 * @param turned how it is turned
 */
public record Hem(List<Placed<Edge>> on, Optional<Length> depth, Turned turned) {
    /** Copies the edges and checks the depth. */
    public Hem {
        on = List.copyOf(on);
        if (depth.isEmpty() && turned != Turned.FACED) {
            throw new IllegalArgumentException("depth must be told of a hem turned " + turned);
        }
    }

    /** How a hem is turned. */
    public enum Turned {
        /** Once; its raw edge is finished flat. */
        ONCE("once"),
        /** Once, and its raw edge turned under. */
        TWICE("twice"),
        /** Twice by the same narrow depth. */
        NARROW("narrow"),
        /** Not turned: a facing is sewn on. */
        FACED("faced");

        private final String word;

        Turned(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /**
     * An edge that is hemmed.
     *
     * @param piece the piece's name
     * @param edge the edge's name
     */
    public record Edge(String piece, String edge) {
        /** As written. */
        @Override
        public String toString() {
            return piece + "." + edge;
        }
    }

    /**
     * What is turned under at the raw edge of a hem turned twice: ¼ in on an inch tape, 6 mm on a
     * metric one.
     *
     * <p>Source: T. Johnson, It's Fun to Sew a Cotton School Dress, 4-H bulletin L-87: turn of the
     * raw edge ¼ in.
     */
    public static Length rawEdge(Tape tape) {
        return tape == Tape.INCH ? Length.ofInches(1, 4) : Length.ofMillimetres(6);
    }

    /**
     * How much cloth it needs below its fold, or below the sewing line of a faced one.
     *
     * <p>Derived: once takes its depth; twice its depth and the turn of the raw edge; narrow its
     * depth two times; a faced one is sewn in a seam.
     *
     * @param seamAllowance of that edge if it were a seam
     */
    public Length addsBelowTheFold(Length seamAllowance, Tape tape) {
        return switch (turned) {
            case ONCE -> depth.orElseThrow();
            case TWICE -> depth.orElseThrow().plus(rawEdge(tape));
            case NARROW -> depth.orElseThrow().times(2);
            case FACED -> seamAllowance;
        };
    }

    /** The edges without their places. */
    public List<Edge> edges() {
        return on.stream().map(Placed::value).toList();
    }

    /** Whether it lies along this edge. */
    public boolean isOn(String piece, String edge) {
        return on.stream().anyMatch(placed -> placed.value().equals(new Edge(piece, edge)));
    }
}
