package secondbolt.worksheet;

/**
 * Something the maker does not know yet.
 *
 * @param what what is unknown
 * @param blocks what is left open because of it
 * @param findOut the cheapest way to find out
 */
public record Open(String what, String blocks, String findOut) {}
