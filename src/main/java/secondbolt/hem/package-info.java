/**
 * Hems: which edges are turned up, how deep and how often, and how much cloth that adds below the
 * fold. Start at {@link secondbolt.hem.HemSection} for what the maker writes. This room uses {@code
 * fit}, {@code file} and {@code measure}. The words may be changed freely; a change of {@link
 * secondbolt.hem.Hem#addsBelowTheFold} moves the cutting line of every hemmed edge. Nothing about
 * seam allowances elsewhere or about drawing belongs here.
 */
package secondbolt.hem;
