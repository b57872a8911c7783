/**
 * What the maker writes of the work: what she makes, steps of her own, what is done, an order of
 * her own and the day she begins. Start at {@link secondbolt.work.plan.WorkSection}. This room uses
 * {@code file}, {@code file.form}, {@code file.value}, {@code file.source} and {@code garment}. A
 * key may be added freely; a change of what one means changes the order on the page. Which steps
 * there are and how they are sorted does not belong here.
 */
package secondbolt.work.plan;
