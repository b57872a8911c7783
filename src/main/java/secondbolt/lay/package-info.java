/**
 * Cutting plans: which designs fit on the maker's cloths, what stays over, what helps where they do
 * not, and how long a cloth from the bolt would have to be. What the maker writes is in {@code
 * lay.plan}; the copies that are laid, in {@code lay.piece}; the cloths, and pieces laid on them,
 * in {@code lay.stock}; how places are found, in {@code lay.search}. What the cutting lines are
 * belongs in {@code cutting}; what a cloth yields, in {@code cloth}.
 */
package secondbolt.lay;
