/**
 * The steps of all topics in one order. Start at {@link secondbolt.work.order.OrderOfWork}. This
 * room uses {@code task}.
 */
package secondbolt.work.order;
