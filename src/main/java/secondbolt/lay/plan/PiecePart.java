package secondbolt.lay.plan;

import java.util.Optional;

/**
 * An edge or a mark of a piece, as written: {@code front.side}.
 *
 * @param piece the piece's name
 * @param part the edge's name, or what the mark marks
 */
public record PiecePart(String piece, String part) {
    /** Reads one; nothing if it is none. */
    public static Optional<PiecePart> parse(String text) {
        int dot = text.indexOf('.');
        String piece = dot < 0 ? "" : text.substring(0, dot).strip();
        String part = text.substring(dot + 1).strip();
        return piece.isEmpty() || part.isEmpty() || part.indexOf('.') >= 0
                ? Optional.empty()
                : Optional.of(new PiecePart(piece, part));
    }

    /** As written. */
    @Override
    public String toString() {
        return piece + "." + part;
    }
}
