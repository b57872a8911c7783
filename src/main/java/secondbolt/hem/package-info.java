/**
 * Hems: which edges are turned up, how deep and how often; how much longer or shorter the turned
 * edge is than the line it lands on, and what to do about it; the card it is pressed over and the
 * strip it is levelled with. Start at {@link secondbolt.hem.HemSection} for what the maker writes
 * and {@link secondbolt.hem.HemCalculation} for the sums, {@link secondbolt.hem.HemWorksheet} for
 * what is shown. This room uses {@code fit}, {@code closure}, {@code cloth}, {@code file}, {@code
 * draw}, {@code topic}, {@code worksheet}, {@code block}, {@code figure}, {@code garment}, {@code
 * shape} and {@code measure}. Words and the look of card and strip may be changed freely; a change
 * of {@link secondbolt.hem.Hem#addsBelowTheFold} moves the cutting line of every hemmed edge.
 * Nothing about seam allowances elsewhere or about the cutting line itself belongs here.
 */
package secondbolt.hem;
