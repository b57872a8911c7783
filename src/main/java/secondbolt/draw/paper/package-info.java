/**
 * The page and its tiles: which paper there is, how much of it a printer reaches, how a drawing is
 * cut into tiles that are glued together again, the marks by which they are joined, and the
 * correction for a printer that is off. Start at {@link secondbolt.draw.paper.Paper} and {@link
 * secondbolt.draw.paper.Tiling}. This room uses {@code draw}, {@code shape} and {@code measure} and
 * is pure. A paper may be added freely; a change of the overlap, the live area or the order of
 * tiles makes sheets on the wall useless beside new ones. Nothing that knows PDF, a topic or the
 * words round a sheet belongs here.
 */
package secondbolt.draw.paper;
