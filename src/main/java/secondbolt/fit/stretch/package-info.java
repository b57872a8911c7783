/**
 * How far the edges of a pattern stretch, by the cloth they are cut from. Start at {@link
 * secondbolt.fit.stretch.ClothStretch}. This room uses {@code fit.seam}, {@code pattern}, {@code
 * pattern.piece}, {@code textile} and the rooms below the topics. How an edge's share is worked out
 * may be changed; a larger one lets a neck pass that will not go over the head. What is judged with
 * it belongs in {@code fit} and {@code fit.seam}.
 */
package secondbolt.fit.stretch;
