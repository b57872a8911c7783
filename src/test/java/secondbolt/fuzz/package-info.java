/**
 * Files that nobody would write, made from sound ones by chance that is always the same, and what
 * the program makes of each. {@link secondbolt.fuzz.MutantsTest} takes some in every build, {@link
 * secondbolt.fuzz.Mutants} as many as are asked for. The smallest file of each fault found is kept
 * as a test of its own, where it belongs.
 */
package secondbolt.fuzz;
