/**
 * What each wash does to a cloth, by a square marked on it, and whether one more is needed before
 * it is cut. Start at {@link secondbolt.prepare.wash.Washes}. This room uses {@code textile},
 * {@code file.value} and {@code measure}. The mark below which a cloth counts as settled may be
 * changed with its source. What the maker writes of it is in {@code textile}, the size that is left
 * in {@code cloth.yields}.
 */
package secondbolt.prepare.wash;
