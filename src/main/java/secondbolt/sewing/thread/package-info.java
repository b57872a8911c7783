/**
 * How much thread the lines of a garment take: the ratio of each stitch, published, by geometry or
 * by her own trial; what the finish of a seam adds; buttonholes and buttons; waste and spools.
 * Start at {@link secondbolt.sewing.thread.ThreadUses} and {@link
 * secondbolt.sewing.thread.ThreadTotals}. This room uses {@code sewing.seam}, {@code sewing.plan},
 * {@code closure.row}, {@code closure.placket}, {@code closure.fastening}, {@code worksheet},
 * {@code garment} and {@code measure}. A source may be added freely; a change of a ratio changes
 * what is bought. Which finish suits a cloth, words and pages belong in {@code sewing}.
 */
package secondbolt.sewing.thread;
