/**
 * Cloths of one role as they are spread for cutting, and pieces laid on them: round flaws and what
 * is cut already, with grain, nap, fold, kept edges and matched checks. Start with {@link
 * secondbolt.lay.stock.StockTable}. It reads and writes no files: what is kept between runs it
 * hands to a {@link secondbolt.lay.stock.LayKeeper}. Which designs are worked out, and what a maker
 * is told, belongs in {@code lay}.
 */
package secondbolt.lay.stock;
