/**
 * The drawing on paper: a PDF document true to scale. Start at {@link
 * secondbolt.draw.pdf.PdfSheet}. This room uses {@code draw}, {@code draw.paper} and {@code shape}
 * and is the only one that may use PDFBox, whose types never leave it. Fonts and their order may be
 * changed freely; the turn from millimetres downwards to points upwards happens once, in {@code
 * PageWriter}, and a second one would put every sheet out of scale. No decision about shape, size,
 * paper or wording belongs here.
 */
package secondbolt.draw.pdf;
