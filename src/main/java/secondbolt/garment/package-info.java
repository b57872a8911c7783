/**
 * The words every topic shares for the parts of a garment: an edge of a piece, the role of a cloth,
 * the wearer's left and right, what an edge or a line stands for. Start at {@link
 * secondbolt.garment.PieceEdge}. This room uses {@code file} and {@code measure}. A word may be
 * added freely; a change of how one is written changes every project file. No shape, calculation,
 * page or drawing belongs here.
 */
package secondbolt.garment;
