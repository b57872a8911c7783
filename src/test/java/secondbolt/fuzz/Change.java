package secondbolt.fuzz;

import java.util.Map;
import java.util.function.Consumer;

/**
 * A change of a sound project that leaves it one.
 *
 * @param what it is, as a developer reads it
 * @param of changes the file as plain mappings and lists
 */
record Change(String what, Consumer<Map<String, Object>> of) {}
