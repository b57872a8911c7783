/**
 * The published orders of making, by kind of garment, with the seams of the maker's own pattern put
 * under the part of the work that sews them. Start at {@link secondbolt.work.kind.BaseSteps}. This
 * room uses {@code pattern}, {@code pattern.piece} and the rooms below the topics. A part or a word
 * by which a piece is known may be added freely; each order names its source. Rules that belong to
 * another topic's step, such as when a hem is sewn, stay with that topic.
 */
package secondbolt.work.kind;
