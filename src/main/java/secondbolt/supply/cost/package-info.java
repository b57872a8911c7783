/**
 * What the shopping list costs: exact decimals in the one money she names, rounded half up to what
 * can be paid, line by line, so that the sum is that of the lines as printed. Start at {@link
 * secondbolt.supply.cost.Cost}. This room uses {@code supply.list}, {@code supply.plan}, {@code
 * task}, {@code file.value} and {@code measure}. Nothing is guessed and no money is turned into
 * another here. Words belong in {@code supply}.
 */
package secondbolt.supply.cost;
