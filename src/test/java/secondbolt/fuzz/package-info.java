/**
 * Files that nobody would write, made from sound ones by chance that is always the same, and what
 * the program makes of each. {@link secondbolt.fuzz.Mutants} change their text, {@link
 * secondbolt.fuzz.Variants} what is written: outlines, edges, limits, names. {@link
 * secondbolt.fuzz.MutantsTest} and {@link secondbolt.fuzz.VariantsTest} take some in every build,
 * the two classes as many as are asked for. The smallest file of each fault found is kept as a test
 * of its own, where it belongs.
 */
package secondbolt.fuzz;
