/**
 * Finished lays kept from run to run, so that a change of something else costs nothing. Start at
 * {@link secondbolt.lay.kept.LayCache}. This room uses {@code lay.search}, {@code lay.placement},
 * {@code lay.nofit}, {@code shape} and {@code measure}. How a lay is written may be changed freely
 * with the version of the search in its key; a key that leaves out what a lay depends on makes old
 * lays pass for new ones, and a {@code LayProof} that lets pass what cannot be cut makes cloth cut
 * wrongly. Where the texts lie on the disk belongs to the commands.
 */
package secondbolt.lay.kept;
