/**
 * The plane geometry of a packing search: shapes in their orientations, the no-fit region of every
 * two of them, the no-fit region of a shape off its container, and its inner fit within one. Start
 * with {@link secondbolt.lay.nofit.NoFitCache}, which makes and keeps what two shapes need, and
 * {@link secondbolt.lay.nofit.NoFitRegion}, which measures the depth of an overlap. It may use
 * {@code lay.placement} and {@code shape}. How regions are kept and looked up may change freely as
 * long as the depths stay the same to the last bit; any other change leads the search to other
 * lays, so {@code lay.stock.LayCache} needs a new word then. Where an item is tried next, and what
 * an overlap weighs, must not be put here: it belongs in {@code lay.search}.
 */
package secondbolt.lay.nofit;
