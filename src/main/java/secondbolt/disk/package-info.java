/**
 * Files that are read and put in place safely: only plain files are opened, no link leads out of a
 * folder, a reader sees the old file or the new one and never half of one, and two runs wait for
 * each other. Start at {@link secondbolt.disk.AtomicFile} and {@link secondbolt.disk.Home}; {@link
 * secondbolt.disk.KeepFolder} holds what only saves work. This room uses no other. How a file is
 * put in place may be changed freely; the ending of a temporary's name is known to runs that clear
 * leftovers away. Nothing that knows what files hold belongs here.
 */
package secondbolt.disk;
