/**
 * Plane geometry in millimetres: points, boxes, paths, outlines, edges and their stretches, regions
 * and the clear rectangles in them. Start at {@link secondbolt.shape.Point}, then {@link
 * secondbolt.shape.Outline} and {@link secondbolt.shape.EdgeLine}. This room uses {@code measure}
 * and is the only one that may use JTS, whose types never leave it. How a figure is computed may be
 * changed freely; a change of the axes (x across to the right, y along downwards) would turn every
 * drawing. Nothing that knows cloth, the names and numbers of pieces, or paper belongs here, nor
 * lines drawn beside an edge: they are in {@code shape.cut}.
 */
package secondbolt.shape;
