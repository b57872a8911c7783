/**
 * The notebook: worked-out projects as pages, sheets and figures to link, keep and print. Start at
 * {@link secondbolt.notebook.Notebook}; {@link secondbolt.notebook.Changes} tells what a remake
 * changes. This room uses {@code project}, {@code worksheet}, {@code file} and all of {@code draw},
 * and is the only one that may use Freemarker and commonmark. Pages and their order may be changed
 * freely; a change of {@code workings.json} breaks programs that read it, and one of the files'
 * names breaks links from outside. Nothing that computes, prints or exits belongs here.
 */
package secondbolt.notebook;
