/**
 * The search for a lay: items are put on containers where they may overlap, and are moved until
 * none does; then the last container is used to a shorter length. Start with {@link
 * secondbolt.lay.search.LaySearch}. It may use {@code lay.near}, {@code lay.nofit}, {@code
 * lay.placement}, {@code parallel} and {@code shape}. All of it may change freely, but any change
 * of what is tried, of its order or of its random numbers leads to other lays, so {@code
 * lay.stock.LayCache} needs a new word then; effort is counted in steps, never in seconds, and the
 * same input must give the same lay on every machine and with any number of workers. What an item
 * is, which cloth a container stands for, and what a maker is told must not be put here: it belongs
 * in {@code lay.stock} and {@code lay}.
 */
package secondbolt.lay.search;
