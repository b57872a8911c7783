/**
 * The blocks that pages and sheets are made of: headings, facts on both tapes, tables, pictures,
 * steps, prose. Start at {@link secondbolt.block.Block}. This room uses {@code draw}, {@code shape}
 * and {@code measure}. A kind of block may be added freely: the compiler then asks every renderer
 * for it; a change of what one means changes pages and sheets alike. No topic's words, no HTML and
 * no place on paper belong here.
 */
package secondbolt.block;
