/**
 * Reading what a maker wrote: YAML as nodes with places, and one description of each key from which
 * reading, the wording of mistakes, the reference and the JSON Schema all come. Start at {@link
 * secondbolt.file.Key} and {@link secondbolt.file.MapForm}; {@link
 * secondbolt.file.ProjectFileReader} reads a file. This room uses {@code file.source} and {@code
 * measure}. A new form may be added freely; a change of a form's words changes mistakes, reference
 * and schema together. Nothing that knows a topic's keys belongs here.
 */
package secondbolt.file;
