/**
 * The plan of cutting as a file beside the project file: written when it is first pinned, brought
 * up to date later without touching what still holds. Start at {@link secondbolt.lay.pin.PlanText}.
 * This room uses {@code lay.design}, {@code lay.stock}, {@code lay.piece}, {@code lay.plan}, {@code
 * file.source}, {@code file.value}, {@code measure} and {@code shape}. The remarks it writes may be
 * changed freely; a change of how places are written moves what is pinned. How the file is read
 * belongs in {@code lay.plan}; whether a place still fits, in {@code lay.stock}.
 */
package secondbolt.lay.pin;
