/**
 * Cloths of one role as they are spread for cutting, and pieces laid on them: round flaws and what
 * is cut already, with grain, nap, fold, features that edges are made of, and matched checks. Start
 * with {@link secondbolt.lay.stock.StockTable}. It may use {@code lay.piece}, {@code lay.plan},
 * {@code lay.search} with what that is built on, and the topics {@code cutting}, {@code fit} and
 * {@code cloth}. How pieces and cloths become items and containers may change freely; but the text
 * a lay is hashed by, and the one it is stored as, in {@link secondbolt.lay.kept.LayCache}, must
 * not change without a new word there, or lays of earlier runs are searched again, or taken where
 * they do not belong; the same holds of {@link secondbolt.lay.design.RemnantCache}. It reads and
 * writes no files: what is stored between runs it hands to a {@link secondbolt.lay.kept.LayStore}.
 * Which designs are worked out, and what a maker is told, must not be put here: it belongs in
 * {@code lay}.
 */
package secondbolt.lay.stock;
