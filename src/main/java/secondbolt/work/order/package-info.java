/**
 * The steps of all topics in one order: what follows what, an order of the maker's own held against
 * it, and the earliest day of each step. Start at {@link secondbolt.work.order.OrderOfWork}. This
 * room uses {@code task}. How ties are settled may be changed freely; that nothing stands before
 * what it follows may not. Which steps there are, and words for the page, do not belong here.
 */
package secondbolt.work.order;
