package secondbolt.garment;

/**
 * One edge of one piece, by their names, written {@code front.side}.
 *
 * @param piece the piece's name
 * @param edge the edge's name
 */
public record PieceEdge(String piece, String edge) {
    /** As the maker writes it. */
    @Override
    public String toString() {
        return piece + "." + edge;
    }
}
