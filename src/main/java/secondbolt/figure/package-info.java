/**
 * Figures with their unit in the type: what a topic came to, for other programs and for comparing.
 * Start at {@link secondbolt.figure.Figures}; {@link secondbolt.figure.Differences} compares two
 * sets of them. This room uses {@code shape} and {@code measure}. A kind of figure may be added
 * freely; a change of a key's ending changes the names other programs read. Nothing that knows a
 * topic, a file or a page belongs here.
 */
package secondbolt.figure;
