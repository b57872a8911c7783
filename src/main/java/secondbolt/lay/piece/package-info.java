/**
 * What is laid: every copy of every piece with its cutting line, mirrored, opened out or on the
 * fold, and where it comes to lie. Which cloth it lies on belongs in {@code lay.stock}; how a place
 * is found, in {@code lay.search}.
 */
package secondbolt.lay.piece;
