/**
 * Bindings worked out: how long their edges are after the alterations, how wide their strips are
 * cut, which strips what the lay leaves yields. Start at {@link
 * secondbolt.trim.bound.BindingCalculation}. This room uses {@code trim.strip}, {@code trim.plan},
 * {@code lay.design}, {@code lay.stock}, {@code cutting.line}, {@code fit.result}, {@code
 * fit.seam}, {@code pattern}, {@code pattern.piece} and the rooms below the topics. What is added
 * for curves and ends may be changed freely. Words, findings and steps belong in {@code trim}.
 */
package secondbolt.trim.bound;
