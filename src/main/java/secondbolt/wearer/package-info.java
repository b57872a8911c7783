/**
 * Whom the garment is for and what sizes the pattern has, as the maker writes them: the wearer's
 * measurements and age, the size chart, the finished measurements, what an opening must let
 * through. Start at {@link secondbolt.wearer.WearerSection} and {@link
 * secondbolt.wearer.SizeChartSection}. This room uses {@code file} and the rooms in it, {@code
 * garment}, {@code topic}, {@code worksheet} and {@code measure}. How a measurement is described
 * may be changed freely; a change of its name changes project files. Which size is chosen, and what
 * ease is enough, belong in {@code fit.size}; the shape of pieces does not belong here.
 */
package secondbolt.wearer;
