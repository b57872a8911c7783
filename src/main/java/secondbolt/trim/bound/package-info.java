/**
 * Bindings worked out: how long their edges are after the alterations, how wide their strips are
 * cut, which strips what the lay leaves yields. Start at {@link
 * secondbolt.trim.bound.BindingCalculation}. This room uses {@code trim.plan}, {@code trim.strip},
 * {@code lay.design}, {@code lay.stock}, {@code cutting.line}, {@code fit.result}, {@code pattern},
 * {@code pattern.piece}, {@code garment}, {@code shape} and {@code measure}. What is added for
 * curves and ends may be changed freely. Words, findings and steps belong in {@code trim}.
 */
package secondbolt.trim.bound;
