/**
 * Reading a traced drawing, an SVG file at real size, into the named edges of a piece. Start at
 * {@link secondbolt.file.svg.SvgDrawing}. This room uses {@code file.source} for places and
 * mistakes, {@code shape} and {@code measure}. More elements may be read freely; a change of how
 * names or the real size are taken from a drawing would change pieces that are already cut. Nothing
 * that writes SVG belongs here: that is what {@code draw.svg} does.
 */
package secondbolt.file.svg;
