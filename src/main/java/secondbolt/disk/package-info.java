/**
 * Files put in place atomically: a reader sees the old file or the new one, never half of one.
 * Start at {@link secondbolt.disk.AtomicFile}; {@link secondbolt.disk.KeepFolder} holds what only
 * saves work. This room uses no other. How a file is put in place may be changed freely; the ending
 * of a temporary's name is known to runs that clear leftovers away. Nothing that knows what files
 * hold belongs here.
 */
package secondbolt.disk;
