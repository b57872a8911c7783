/**
 * One piece altered: how its outline, edges, darts, notches and lines follow what is lengthened,
 * shortened, widened or narrowed, on paper or by tape. Start at {@link
 * secondbolt.fit.alter.PieceAlteration}. This room uses {@code pattern}, {@code pattern.piece},
 * {@code garment}, {@code file.value}, {@code shape}, {@code shape.cut} and {@code measure}. The
 * order of the helpers may be changed freely; a change of how an edge follows an alteration changes
 * every sewing line. Whether seams still meet, and every word about it, belong elsewhere.
 */
package secondbolt.fit.alter;
