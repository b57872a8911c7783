/**
 * What stays over of the recovered cloth once the made design is laid: rectangles beside the
 * pieces, with what one of such a size is good for. Start at {@link
 * secondbolt.supply.left.LeftOver}. This room uses {@code lay.design}, {@code lay.stock}, {@code
 * lay.piece} and the rooms below the topics. A use may be added freely. How pieces are laid, and
 * what new cloth would take, belong in {@code lay}.
 */
package secondbolt.supply.left;
