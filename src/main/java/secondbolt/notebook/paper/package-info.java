/**
 * The maker's paper: what lies on her desk, which paper each sheet takes, and how a sheet's blocks
 * are set on it, and the code of all that is printed. Start at {@link
 * secondbolt.notebook.paper.PaperChoice}. This room uses {@code draw.paper}, {@code draw.sheet},
 * {@code draw}, {@code project}, {@code block}, {@code worksheet} and {@code measure}. How blocks
 * are set may be changed freely; a change of which paper is taken changes the tiles of every sheet,
 * and a change of what a code covers makes every sheet on a wall stale. Pages and files belong in
 * {@code notebook}.
 */
package secondbolt.notebook.paper;
