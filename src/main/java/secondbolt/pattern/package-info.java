/**
 * The pattern as the maker writes it: its pieces together, which edges are sewn to which, which
 * openings are left, what its edges and lines stand for, and what she wants altered. Start at
 * {@link secondbolt.pattern.PatternSection} and {@link secondbolt.pattern.AlterationSection} for
 * the keys, {@link secondbolt.pattern.Pattern} for the record. This room uses {@code
 * pattern.piece}, {@code wearer}, {@code garment}, {@code file} and the rooms in it, {@code shape}
 * and {@code measure}. An alteration may be added freely; a change of how a sum of edges is written
 * changes every seam in project files. Nothing is altered here, and no length is worked out: that
 * is {@code fit.result} and the rooms below it.
 */
package secondbolt.pattern;
