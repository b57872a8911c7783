/**
 * JSON as text: written with keys in the order they were put, read back as plain maps, lists, words
 * and numbers. Start at {@link secondbolt.file.json.Json} and {@link
 * secondbolt.file.json.JsonReader}. This room uses no other. How it reads may be changed freely; a
 * change of how a number or a blank is written changes every schema, figure file and kept working.
 * Nothing that knows what is stored belongs here.
 */
package secondbolt.file.json;
