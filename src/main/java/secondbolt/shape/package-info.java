/**
 * Plane geometry in millimetres: points, boxes, outlines, edges, cutting lines and regions. Start
 * at {@link secondbolt.shape.Point}. This room uses {@code measure} and is the only one that may
 * use JTS, whose types never leave it. How a figure is computed may be changed freely; a change of
 * the axes (x across to the right, y along downwards) would turn every drawing. Nothing that knows
 * cloth, the names and numbers of pieces, or paper belongs here.
 */
package secondbolt.shape;
