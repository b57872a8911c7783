/**
 * Hems shown: what is found of them, their page, sheets and figures. Start at {@link
 * secondbolt.hem.HemWorksheet}. This room uses {@code hem.giving}, {@code hem.guide}, {@code
 * hem.turned}, {@code hem.plan}, {@code fit}, {@code fit.result}, {@code pattern}, {@code
 * pattern.piece}, {@code textile}, {@code shape.cut} and the rooms below the topics. Words may be
 * changed freely; a change of when a fullness is told changes what is eased or clipped on cloth.
 * What the maker writes is in {@code hem.plan}; nothing about seam allowances elsewhere or about
 * the cutting line itself belongs here.
 */
package secondbolt.hem;
