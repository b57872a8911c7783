/**
 * How a piece is drawn: its lines, notches, darts and grain, and its words where there is room for
 * them. Start at {@link secondbolt.cutting.sketch.PieceSketch}. This room uses {@code
 * cutting.line}, {@code pattern.piece}, {@code draw}, {@code shape}, {@code shape.cut} and {@code
 * measure}. Where words stand may be changed freely; a change of a pen or a mark changes what a
 * maker reads on every piece. Which lines there are belongs in {@code cutting.line}; pages and
 * sheets belong in {@code cutting}.
 */
package secondbolt.cutting.sketch;
