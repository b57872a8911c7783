/**
 * What is laid: every copy of every piece with its cutting line, mirrored, opened out or on the
 * fold, and where it comes to lie. Start with {@link secondbolt.lay.piece.LayPieces}. It may use
 * {@code lay.placement}, {@code lay.plan} and the topics {@code cutting}, {@code fit} and {@code
 * cloth}. How copies are made may change freely as long as their outlines stay the same; a change
 * of an outline is a change of every lay, and of what is cut. Which cloth a piece lies on must not
 * be put here: it belongs in {@code lay.stock}; how its position is found, in {@code lay.search}.
 */
package secondbolt.lay.piece;
