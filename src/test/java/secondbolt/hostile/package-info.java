/**
 * Working folders that came from a stranger, or in which something went wrong. {@link
 * secondbolt.hostile.HostileFilesTest} takes those of {@code src/test/resources/hostile}, a folder
 * each with files as they would be downloaded; the other tests make what such files cannot hold.
 * Each is held against the same rules by {@link secondbolt.hostile.StrangersDesk}: it is refused
 * with its message or does no harm, and nothing outside of the site is touched.
 */
package secondbolt.hostile;
