/**
 * A cutting plan as a picture, its pieces numbered in the order they are read. Start at {@link
 * secondbolt.lay.picture.LayDrawing}. This room uses {@code lay.design}, {@code lay.stock}, {@code
 * lay.piece}, {@code lay.plan}, {@code cloth}, {@code draw}, {@code shape} and {@code measure}. The
 * look of a plan may be changed freely; a change of a piece's number makes old sheets useless
 * beside new ones. What is said of a plan belongs in {@code lay}.
 */
package secondbolt.lay.picture;
