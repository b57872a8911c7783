package secondbolt.worksheet;

/**
 * A word of the trade.
 *
 * @param word the word
 * @param meaning what it means, in two lines at most
 */
public record Term(String word, String meaning) {}
