/**
 * Cutting plans: which designs fit on the maker's cloths, what stays over, what helps where they do
 * not, and how long a cloth from the bolt would have to be. Start with {@link
 * secondbolt.lay.LayCalculation}. It may use {@code lay.plan} (what the maker writes), {@code
 * lay.piece} (the copies that are laid), {@code lay.stock} (the cloths, and pieces laid on them),
 * {@code lay.placement}, and the topics {@code cutting}, {@code fit} and {@code cloth}. Pages,
 * sheets and their words may change freely; the order in which designs, roles and remedies are
 * worked out is the order in which they are told. How positions are found must not be put here: it
 * belongs in {@code lay.search}; what the cutting lines are, in {@code cutting}; what a cloth
 * yields, in {@code cloth}.
 */
package secondbolt.lay;
