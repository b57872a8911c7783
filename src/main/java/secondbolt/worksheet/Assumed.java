package secondbolt.worksheet;

/**
 * A value that was not written and therefore assumed; nothing is assumed in silence.
 *
 * @param what what was not written
 * @param value what is taken instead
 * @param source why that
 */
public record Assumed(String what, String value, String source) {}
