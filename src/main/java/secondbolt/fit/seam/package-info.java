/**
 * How long edges are where they are sewn, and whether two that are sewn together meet. Start at
 * {@link secondbolt.fit.seam.Lengths} and {@link secondbolt.fit.seam.SeamCheck}. This room uses
 * {@code pattern}, {@code pattern.piece}, {@code worksheet}, {@code garment}, {@code file.value},
 * {@code shape}, {@code shape.cut} and {@code measure}. How a check is worded may be changed
 * freely; a change of what counts as sewn changes which seams are told not to meet. How an edge is
 * altered belongs in {@code fit.alter}.
 */
package secondbolt.fit.seam;
