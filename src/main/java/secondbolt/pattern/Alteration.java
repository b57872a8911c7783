package secondbolt.pattern;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import secondbolt.file.source.Place;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.Piece;

/** A change to the pattern, written once, that every piece concerned follows. */
public sealed interface Alteration {
    /** Where it stands in the file. */
    Place place();

    /** In which fitting it was found, if told. */
    Optional<String> found();

    /** As a page names it, without its amount. */
    String words();

    /** Answers with the function for the kind of alteration. */
    <R> R accept(Visitor<R> visitor);

    /** One answer for each kind of alteration. */
    interface Visitor<R> {
        /** Answers for a change of length. */
        R lengthen(Lengthen lengthen);

        /** Answers for a change of width. */
        R widen(Widen widen);
    }

    /**
     * Lengthens every piece that carries a line, or shortens it.
     *
     * @param line the name of the line
     * @param by by how much; negative shortens
     * @param pieces pieces that differ, on purpose
     * @param found in which fitting, if told
     * @param place where it stands
     */
    record Lengthen(
            String line, Length by, Map<String, Length> pieces, Optional<String> found, Place place)
            implements Alteration {
        /** Copies the map in order. */
        public Lengthen {
            pieces = Collections.unmodifiableMap(new LinkedHashMap<>(pieces));
        }

        /** A line put in above moves its place, and changes nothing. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Lengthen same
                    && line.equals(same.line)
                    && by.equals(same.by)
                    && pieces.equals(same.pieces)
                    && found.equals(same.found);
        }

        @Override
        public int hashCode() {
            return Objects.hash(line, by, pieces, found);
        }

        /** By how much it changes this piece, if it carries the line. */
        public Length on(Piece piece) {
            return piece.lines().containsKey(line)
                    ? pieces.getOrDefault(piece.name(), by)
                    : Length.ZERO;
        }

        @Override
        public String words() {
            return (by.isNegative() ? "shorten " : "lengthen ") + line;
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.lengthen(this);
        }
    }

    /**
     * Widens all round the body at every edge of a name, or narrows.
     *
     * @param edges the names of the edges
     * @param by by how much in all; negative narrows
     * @param from nothing above this, measured along the piece from its top
     * @param to all from this on
     * @param found in which fitting, if told
     * @param place where it stands
     */
    record Widen(
            List<String> edges,
            Length by,
            Optional<Length> from,
            Optional<Length> to,
            Optional<String> found,
            Place place)
            implements Alteration {
        /** Copies the names. */
        public Widen {
            edges = List.copyOf(edges);
        }

        /** A line put in above moves its place, and changes nothing. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Widen same
                    && edges.equals(same.edges)
                    && by.equals(same.by)
                    && from.equals(same.from)
                    && to.equals(same.to)
                    && found.equals(same.found);
        }

        @Override
        public int hashCode() {
            return Objects.hash(edges, by, from, to, found);
        }

        @Override
        public String words() {
            return (by.isNegative() ? "narrow " : "widen ") + String.join(" and ", edges);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.widen(this);
        }
    }
}
