/**
 * The maker's paper: what lies on her desk, which paper each sheet takes, and how a sheet's blocks
 * are set on it. Start at {@link secondbolt.notebook.paper.PaperChoice}. This room uses {@code
 * draw.paper}, {@code draw.sheet}, {@code draw}, {@code project}, {@code block}, {@code worksheet}
 * and {@code measure}. How blocks are set may be changed freely; a change of which paper is taken
 * changes the tiles of every sheet. Pages, files and sheet codes belong in {@code notebook}.
 */
package secondbolt.notebook.paper;
