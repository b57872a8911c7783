package secondbolt.worksheet;

/**
 * A thing needed.
 *
 * @param item what it is
 * @param count how many
 * @param why what for
 */
public record Need(String item, int count, String why) {}
