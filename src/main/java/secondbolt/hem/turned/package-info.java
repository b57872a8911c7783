/**
 * Hems worked out: how long each turned edge is, how much longer or shorter than the line it lands
 * on, and what to do about it. Start at {@link secondbolt.hem.turned.HemCalculation}. This room
 * uses {@code hem.plan}, {@code fit.result}, {@code pattern}, {@code pattern.piece}, {@code
 * textile}, {@code textile.extent}, {@code worksheet}, {@code garment}, {@code shape}, {@code
 * shape.cut} and {@code measure}. How a result is held may be changed freely; a change of where an
 * edge lands changes what is eased or clipped on cloth. Cards and strips belong in {@code
 * hem.guide}, pages and findings in {@code hem}.
 */
package secondbolt.hem.turned;
