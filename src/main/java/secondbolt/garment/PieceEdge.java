package secondbolt.garment;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import secondbolt.file.Form;
import secondbolt.file.form.Forms;

/**
 * One edge of one piece, by their names, written {@code front.side}.
 *
 * @param piece the piece's name
 * @param edge the edge's name; where a mark may stand as well, the mark's
 */
public record PieceEdge(String piece, String edge) {
    private static final char DOT = '.';

    private static final Set<String> WHERE =
            Set.of(
                    "top", "right", "bottom", "left", "front", "back", "inner", "outer", "lower",
                    "upper", "inside", "outside");

    /**
     * Reads one: two names in any language with one dot between them; spaces round a name are not
     * part of it.
     *
     * @return nothing if a name is empty, or there is not one dot
     */
    public static Optional<PieceEdge> parse(String text) {
        int dot = text.indexOf(DOT);
        if (dot < 0 || dot != text.lastIndexOf(DOT)) {
            return Optional.empty();
        }
        String piece = text.substring(0, dot).strip();
        String edge = text.substring(dot + 1).strip();
        return piece.isEmpty() || edge.isEmpty()
                ? Optional.empty()
                : Optional.of(new PieceEdge(piece, edge));
    }

    /**
     * How one is written.
     *
     * @param words what is right where it is none
     */
    public static Form<PieceEdge> form(String words) {
        return Forms.parsed(words, PieceEdge::parse);
    }

    /** As a maker says it in a sentence: {@code the hem of the front}. */
    public String words() {
        return "the " + heading();
    }

    /**
     * As a maker says it alone, in a table or a list: {@code hem of the front}, and {@code left
     * edge of the cuff} where the name only tells where the edge is.
     */
    public String heading() {
        boolean tellsWhere = Stream.of(edge.split(" ", -1)).allMatch(WHERE::contains);
        return edge + (tellsWhere ? " edge" : "") + " of the " + piece;
    }

    /** As the maker writes it in the file. */
    @Override
    public String toString() {
        return piece + DOT + edge;
    }
}
