/**
 * Interfacing worked out: which pieces are cut of it, what a stiff kind is cut back by, how hot
 * their cloth may be pressed, what is published on shrinking it. Start at {@link
 * secondbolt.trim.fused.InterfacingCalculation}. This room uses {@code lay.design}, {@code
 * lay.plan}, {@code cutting.line}, {@code cloth.yields}, {@code prepare.heat}, {@code
 * textile.state}, {@code textile}, {@code textile.fibre}, {@code pattern.piece}, {@code garment},
 * {@code shape}, {@code measure} and of {@code worksheet} the convention. A side of a dispute may
 * be added with its source; a heat above what a fibre bears burns a garment. Words, findings and
 * steps belong in {@code trim}.
 */
package secondbolt.trim.fused;
