package secondbolt.pattern.piece;

import secondbolt.shape.EdgeLine;

/**
 * An edge of a piece.
 *
 * @param name as the maker calls it
 * @param line where its sewing line runs, in millimetres of the piece
 */
public record NamedEdge(String name, EdgeLine line) {}
