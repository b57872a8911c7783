/**
 * The wearer's body beside the pattern's sizes: who wears the garment, the size chart, the size to
 * start from, the ease in the finished garment, and the alterations that follow from the
 * difference. Start at {@link secondbolt.fit.size.SizeChartSection} and {@link
 * secondbolt.fit.size.WearerSection} for what the maker writes, {@link
 * secondbolt.fit.size.SizeCalculation} for the sums and {@link secondbolt.fit.size.SizePage} for
 * what is shown. This room uses {@code garment}, {@code file}, {@code topic}, {@code worksheet},
 * {@code figure}, {@code block} and {@code measure}. Words may be changed freely; a change of a
 * measurement's name changes project files, and a change of the size rule changes which size is
 * cut. Nothing about the shape of pieces belongs here, nor how an alteration is carried out.
 */
package secondbolt.fit.size;
