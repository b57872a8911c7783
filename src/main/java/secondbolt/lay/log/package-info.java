/**
 * What is cut so far, checked: hands and counts, and whether each piece can lie where it is said to
 * have been cut. Start at {@link secondbolt.lay.log.CutLog}. This room uses {@code worksheet},
 * {@code lay.plan}, {@code lay.piece}, {@code lay.stock}, {@code cloth.yields}, {@code textile},
 * {@code textile.extent}, {@code pattern.piece}, {@code garment}, {@code file.value}, {@code shape}
 * and {@code measure}. Words may be changed freely; the order may not: a wrong hand is told first,
 * because it is the one that costs cloth. What still has to be cut belongs in {@code lay.stock}.
 */
package secondbolt.lay.log;
