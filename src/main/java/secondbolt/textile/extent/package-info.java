/**
 * How large a cloth is and where it is not whole, as the maker writes it: measured by its sides, by
 * its corners or by its outline, its selvedges and raw edges, its flaws and features. Start at
 * {@link secondbolt.textile.extent.Extent} and {@link secondbolt.textile.extent.Flaw}. This room
 * uses {@code file} and the rooms in it, {@code garment}, {@code shape} and {@code measure}. A way
 * of measuring may be added freely; a change of where a corner is counted from moves every flaw on
 * cloth. What is left of it after a wash belongs in {@code cloth.yields}.
 */
package secondbolt.textile.extent;
