/**
 * Buttons and buttonholes: how long a hole must be, where each button and hole comes, and the strip
 * that is laid on the cloth to mark them. Start at {@link secondbolt.closure.ClosureSection} for
 * what the maker writes and {@link secondbolt.closure.ClosureCalculation} for the sums. This room
 * uses {@code file}, {@code draw}, {@code worksheet}, {@code shape} and {@code measure}. The look
 * of the strip may be changed freely; a change of where a hole begins beside its button moves every
 * hole on cloth. Nothing about the pieces a closure lies on belongs here, nor how hems are made; of
 * them only how deep they lie where a placket ends.
 */
package secondbolt.closure;
