/**
 * The hand-written list of topics, and a project as written and as worked out. Start at {@link
 * secondbolt.project.Topics}; {@link secondbolt.project.Workshop} reads and works out. This room
 * uses the topics and every room below them; only the notebook and the commands stand above it. A
 * topic is added here by one line in one list; a change of a section's name changes every project
 * file. No calculation, page or drawing belongs here.
 */
package secondbolt.project;
