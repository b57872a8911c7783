/**
 * The sheet on paper: which page sizes there are, how a drawing is cut into tiles that are glued
 * together again, what is printed round it, and the correction for a printer that is off. Start at
 * {@link secondbolt.draw.paper.SheetPages}. This room uses {@code draw}, {@code shape} and {@code
 * measure} and is pure. Wording and layout may be changed freely; a change of the overlap, the live
 * area or the order of tiles makes sheets on the wall useless beside new ones. Nothing that knows
 * PDF or a topic belongs here.
 */
package secondbolt.draw.paper;
