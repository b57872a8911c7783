/**
 * The cloth as the maker writes it: what it is made of and how heavy, its nap and repeat, its size
 * and state, whether it was washed beforehand. Start at {@link secondbolt.textile.ClothSection} for
 * the keys and {@link secondbolt.textile.Cloth} for the record. This room uses {@code
 * textile.extent}, {@code textile.fibre}, {@code textile.state}, {@code garment}, {@code file} and
 * the rooms in it, {@code shape} and {@code measure}. A fibre may be added freely; a change of a
 * key changes project files. Nothing is worked out here: what the wash does and what a cloth yields
 * belong in {@code cloth.yields}.
 */
package secondbolt.textile;
