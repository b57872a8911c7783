/**
 * The forms in which a value is written: words, numbers and lengths, lists, maps and named entries,
 * one of several, a file beside the project. Start at {@link secondbolt.file.form.Forms}, then
 * {@link secondbolt.file.form.MapForm}. This room uses {@code file}, {@code file.value}, {@code
 * file.source} and {@code measure}. A form may be added freely; a change of a form's words changes
 * mistakes, reference and schema together. Nothing that knows a topic's keys belongs here.
 */
package secondbolt.file.form;
