/**
 * What is laid for each design: on the maker's cloths, or on a length from the bolt, and what helps
 * where a design does not fit. Start at {@link secondbolt.lay.design.LayCalculation}. This room
 * uses {@code worksheet}, {@code lay.kept}, {@code lay.plan}, {@code lay.piece}, {@code lay.stock},
 * {@code lay.log}, {@code lay.placement}, {@code cutting.line}, {@code cloth.yields}, {@code
 * textile}, {@code pattern.piece}, {@code garment}, {@code file.value}, {@code shape} and {@code
 * measure}. Which remedies are tried may be changed freely; a change of the order in which designs
 * are laid changes which cloth each comes from. How places are found belongs in {@code lay.search};
 * words, pages and drawings belong in {@code lay}.
 */
package secondbolt.lay.design;
