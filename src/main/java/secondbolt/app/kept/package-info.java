/**
 * What the commands keep between runs in the working folder, to save work: finished lays, and which
 * projects of a site stand as they are. Start at {@link secondbolt.app.kept.Standing}. This room
 * uses {@code disk}, {@code lay.kept} and {@code notebook.site}. How things are kept may be changed
 * freely; all of it can be deleted at any time, and nothing of it may be believed that the notebook
 * could not be made again from. What a command does with it belongs in {@code app}.
 */
package secondbolt.app.kept;
