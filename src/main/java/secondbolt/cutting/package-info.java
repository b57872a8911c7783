/**
 * Cutting shown: the pieces packed on pages and printed full size, the grid to draw them by hand,
 * what is told of them. Start at {@link secondbolt.cutting.PieceSheets}. This room uses {@code
 * cutting.giving}, {@code cutting.line}, {@code cutting.sketch}, {@code fit}, {@code fit.result},
 * {@code pattern}, {@code pattern.piece}, {@code hem.plan} and the rooms below the topics. How
 * pages are filled may be changed freely; a change of a piece's number makes old sheets useless
 * beside new ones. Where cloth is cut belongs in {@code cutting.line}; how pieces lie on the cloth
 * does not belong here.
 */
package secondbolt.cutting;
