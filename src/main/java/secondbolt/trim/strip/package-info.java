/**
 * Strips cut from a rectangle of cloth, on the bias or straight: how wide they are cut, how many
 * there are of which length, what their joins take, how much cloth they take by the textbook's sum.
 * Start at {@link secondbolt.trim.strip.BiasCloth}. This room uses {@code shape}, {@code measure}
 * and of {@code worksheet} the convention. How strips are chosen may be changed freely; a strip
 * told longer than it is leaves a garment half bound. Which cloth it is, and every word of it,
 * belong elsewhere.
 */
package secondbolt.trim.strip;
