/**
 * What the maker writes of things to buy: what she has, what a pack holds and costs, in which
 * money, and the hours she keeps. Start at {@link secondbolt.supply.plan.SupplySection} for the
 * keys and {@link secondbolt.supply.plan.Supply} for the record. This room uses {@code task},
 * {@code file} and the rooms in it, and {@code measure}. A key may be added freely; a change of
 * {@link secondbolt.supply.plan.Quantity} changes what is bought and paid. What is needed, rounded
 * and summed belongs in {@code supply.list} and {@code supply.cost}.
 */
package secondbolt.supply.plan;
