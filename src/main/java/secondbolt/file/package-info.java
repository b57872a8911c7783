/**
 * Reading what a maker wrote: one description of each key, from which reading, the wording of
 * mistakes, the reference and the JSON Schema all come, and the fields that were read. Start at
 * {@link secondbolt.file.Key} and {@link secondbolt.file.Form}; {@link
 * secondbolt.file.ProjectFileReader} reads a file. This room uses {@code file.value}, {@code
 * file.json}, {@code file.source} and {@code measure}; the forms themselves are in {@code
 * file.form}. How spelling is guessed at may be changed freely; a change of the order in which keys
 * are read changes the order of mistakes. Nothing that knows a topic's keys belongs here.
 */
package secondbolt.file;
