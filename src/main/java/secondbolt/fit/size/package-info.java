/**
 * The wearer's body beside the pattern's sizes: the size to start from, the ease in the finished
 * garment, and the alterations that follow from the difference. Start at {@link
 * secondbolt.fit.size.SizeCalculation}. This room uses {@code wearer}, {@code worksheet}, {@code
 * block}, {@code figure}, {@code garment} and {@code measure}. Words may be changed freely; a
 * change of the size rule changes which size is cut. What the maker writes is in {@code wearer};
 * nothing about the shape of pieces belongs here, nor how an alteration is carried out.
 */
package secondbolt.fit.size;
