/**
 * The shopping list worked out: what all topics need, the made design's notions and the maker's own
 * things, each once, less what is in the house, rounded up as it is sold. Start at {@link
 * secondbolt.supply.list.Shopping}. This room uses {@code supply.plan}, {@code task}, {@code
 * file.value} and {@code measure}. Nothing here may be changed freely: what is rounded down or left
 * out is lacking when the shop is closed. Money belongs in {@code supply.cost}; words and blocks in
 * {@code supply}.
 */
package secondbolt.supply.list;
