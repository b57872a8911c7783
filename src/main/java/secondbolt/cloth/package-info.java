/**
 * The cloth shown: what is found of it, its page, drawing and figures. Start at {@link
 * secondbolt.cloth.ClothWorksheet}. This topic comes first; it uses {@code cloth.yields}, {@code
 * textile}, {@code textile.extent} and the rooms below the topics. Wording may be changed freely; a
 * change of a flaw's letter parts the drawing from its table. What the maker writes is in {@code
 * textile}, what is worked out of it in {@code cloth.yields}; nothing that knows a pattern, a dye
 * or a price belongs here.
 */
package secondbolt.cloth;
