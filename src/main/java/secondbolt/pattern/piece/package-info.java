/**
 * One piece of a pattern as the maker writes it: its outline with named edges, drawn, traced or
 * taken by tape, its lines, darts, notches and marks. Start at {@link
 * secondbolt.pattern.piece.Piece} and {@link secondbolt.pattern.piece.PieceShape}; {@link
 * secondbolt.pattern.piece.PieceKeys} reads it. This room uses {@code file} and the rooms in it,
 * {@code garment}, {@code shape} and {@code measure}. A way of writing a shape may be added freely;
 * a change of which way an edge runs turns every edge sewn to it. Nothing that alters a piece or
 * knows a second one belongs here.
 */
package secondbolt.pattern.piece;
