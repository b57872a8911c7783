/**
 * What suits a cloth at the machine: which finish its edges want and what that takes of the
 * allowance, which needle goes through it. Start at {@link secondbolt.sewing.advice.FinishAdvice}.
 * This room uses {@code sewing.plan}, {@code sewing.seam}, {@code cloth.yields}, {@code textile},
 * {@code textile.fibre}, {@code garment}, {@code worksheet} and {@code measure}. A source or a word
 * may be changed freely; a change of what a finish wants changes which seams are warned of. How
 * long seams are and what thread they take do not belong here.
 */
package secondbolt.sewing.advice;
