/**
 * The hand-written list of topics: a project as the maker wrote it, and its workings. Start at
 * {@link secondbolt.project.Workings}. This room uses the topics and every room below them; only
 * the notebook and the commands stand above it. A topic is added here by one more line in each
 * list; a change of a section's name changes every project file. No calculation, page or drawing
 * belongs here.
 */
package secondbolt.project;
