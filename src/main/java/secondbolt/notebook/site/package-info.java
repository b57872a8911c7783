/**
 * The made site as files, and how they are put into a folder without ever leaving it half made.
 * Start at {@link secondbolt.notebook.site.SiteWriter}. This room uses {@code file.json} and {@code
 * disk}. The names of temporaries and of the journal may be changed between versions; a change of
 * {@code contents.json} would leave the files of an older run behind. Nothing that knows what the
 * files show belongs here.
 */
package secondbolt.notebook.site;
