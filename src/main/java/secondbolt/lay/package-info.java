/**
 * Cutting plans shown: which designs fit on the maker's cloths, what stays over, what helps where
 * they do not, and how long a cloth from the bolt would have to be. Start at {@link
 * secondbolt.lay.LayWords} for the words. This room uses {@code lay.giving}, {@code lay.kept},
 * {@code lay.design}, {@code lay.plan}, {@code lay.piece}, {@code lay.stock}, {@code
 * lay.placement}, {@code cutting.line}, {@code cloth}, {@code cloth.yields}, {@code cutting},
 * {@code textile}, {@code pattern}, {@code pattern.piece} and the rooms below the topics. The look
 * of plans may be changed freely; a change of a piece's number makes old sheets useless beside new
 * ones. What the maker writes is in {@code lay.plan}; the copies that are laid, in {@code
 * lay.piece}; the cloths, and pieces laid on them, in {@code lay.stock}; what is laid, in {@code
 * lay.design}. What the cutting lines are belongs in {@code cutting.line}; what a cloth yields, in
 * {@code cloth.yields}.
 */
package secondbolt.lay;
