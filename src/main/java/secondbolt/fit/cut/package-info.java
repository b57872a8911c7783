/**
 * Pieces that are cut already: each keeps the shape it was cut in, whatever is altered since. Start
 * at {@link secondbolt.fit.cut.CutShapes}. This room uses {@code fit.alter}, {@code pattern},
 * {@code pattern.piece} and {@code measure}. How shapes are found may be changed freely; a change
 * of when a question is asked lets a cut piece grow on paper that cannot grow on the table. Where a
 * piece was cut belongs in {@code lay}.
 */
package secondbolt.fit.cut;
