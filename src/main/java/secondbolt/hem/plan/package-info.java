/**
 * Hems as the maker writes them: which edges are turned up, how deep and how often, which depth is
 * usual for a garment, and what follows from that alone: the allowance below the fold, the bulk at
 * an edge. Start at {@link secondbolt.hem.plan.HemSection} for the keys and {@link
 * secondbolt.hem.plan.Hem} for the record. This room uses {@code pattern}, {@code pattern.piece},
 * {@code worksheet}, {@code garment}, {@code file} and the rooms in it, {@code shape} and {@code
 * measure}. A garment may be added freely; a change of {@link
 * secondbolt.hem.plan.Hem#addsBelowTheFold} moves the cutting line of every hemmed edge. What to do
 * with a surplus, and every word and drawing of it, belong in {@code hem}.
 */
package secondbolt.hem.plan;
