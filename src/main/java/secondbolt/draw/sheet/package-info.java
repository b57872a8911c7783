/**
 * The sheet as it is printed: all its pages, the lead sheet with test square, rulers and the map of
 * the tiles, tables, words and pictures, the lines of words at the edges. Start at {@link
 * secondbolt.draw.sheet.SheetPages}. This room uses {@code draw.paper}, {@code draw}, {@code shape}
 * and {@code measure} and is pure. Wording and layout may be changed freely; a change of the test
 * square or the rulers changes what a maker measures to trust her printer. How tiles are cut
 * belongs in {@code draw.paper}; nothing that knows PDF or a topic belongs here.
 */
package secondbolt.draw.sheet;
