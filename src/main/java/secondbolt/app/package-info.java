/**
 * The command line: commands, exit codes, wiring. Start at {@link secondbolt.app.Main}. This room
 * may use every other; it and the rooms in it are the only ones that print, read the clock or exit.
 * How progress looks may be changed freely; a change of an exit code or of a mistake's form would
 * break scripts. Nothing that is worked out, drawn or laid out belongs here.
 */
package secondbolt.app;
