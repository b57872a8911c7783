/**
 * What the program's words go through on their way to a terminal. Start at {@link
 * secondbolt.app.terminal.Terminal}. This room uses {@code file.source} for what is not to be seen.
 * What is let through may be narrowed freely; letting a control character through would let a file
 * or a folder's name command a stranger's terminal. Nothing that decides what is told belongs here.
 */
package secondbolt.app.terminal;
