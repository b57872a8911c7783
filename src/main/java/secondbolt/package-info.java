/**
 * Secondbolt turns a maker's project file into a notebook of pages and true-to-scale sheets. Each
 * package below is a room with one topic; its {@code package-info} says what belongs there. Start
 * at {@code secondbolt.app} for the commands, at {@code secondbolt.project} for the list of topics.
 * Nothing stands in this package itself.
 */
package secondbolt;
