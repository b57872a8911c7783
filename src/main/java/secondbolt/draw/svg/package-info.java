/**
 * The drawing on the page: an inline SVG element with one unit to the millimetre. Start at {@link
 * secondbolt.draw.svg.SvgRenderer}. This room uses {@code draw} and {@code shape}. Attributes may
 * be changed freely, the committed site shows the difference; units other than millimetres would
 * part the page from the sheet. No decision about shape, size or wording belongs here.
 */
package secondbolt.draw.svg;
