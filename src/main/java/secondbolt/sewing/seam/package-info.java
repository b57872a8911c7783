/**
 * What there is to sew, measured on the altered pattern: how long each join is and how often it is
 * sewn, darts, hems, second layers, the edges that nobody has told of, and how wide, how straight
 * and how even the allowances of a join are. Start at {@link secondbolt.sewing.seam.SewnLines}.
 * This room uses {@code sewing.plan}, {@code fit.result}, {@code fit.seam}, {@code hem.plan},
 * {@code hem.turned}, {@code cutting.line}, {@code pattern}, {@code pattern.piece}, {@code
 * worksheet}, {@code garment}, {@code shape} and {@code measure}. How lines are held may be changed
 * freely; a change of how often a join is counted changes the thread that is bought. What a stitch
 * takes belongs in {@code sewing.thread}, words and pages in {@code sewing}.
 */
package secondbolt.sewing.seam;
