package secondbolt.draw;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * Six characters that stand for all that is printed on a sheet, so that paper on the wall can be
 * told current or stale.
 *
 * <p>A sheet that says the same has the same code on any machine. Two that differ share a code
 * about once in 191 million. Of characters that look alike (0 O, 1 I L, 2 Z, 5 S, 8 B, U V) the
 * alphabet has one at most, and it has no vowels, so that no code spells a word.
 *
 * @param text six characters
 */
public record SheetCode(String text) {
    /** The characters there are. */
    public static final String ALPHABET = "23456789CDFGHJKMNPQRTVWX";

    /** How many characters a code has. */
    public static final int LENGTH = 6;

    /**
     * Checks the characters.
     *
     * @throws IllegalArgumentException if there are not six of the alphabet
     */
    public SheetCode {
        if (!isCode(text)) {
            throw new IllegalArgumentException("not a sheet code: " + text);
        }
    }

    /** Whether a text could be a code. */
    public static boolean isCode(String text) {
        return text.length() == LENGTH && text.chars().allMatch(c -> ALPHABET.indexOf(c) >= 0);
    }

    /**
     * The code of a sheet: from the SHA-256 of its drawing's {@link CanonicalText} and of all else
     * that is printed.
     *
     * @param words all that stands beside the drawing, and what it is printed on, in a fixed order
     */
    public static SheetCode of(Drawing drawing, String... words) {
        StringBuilder content = new StringBuilder(CanonicalText.of(drawing));
        for (String word : words) {
            // The length stands before the text, so that no text can pass for what follows it.
            content.append(word.length()).append(' ').append(word).append('\n');
        }
        byte[] bytes = content.toString().getBytes(StandardCharsets.UTF_8);
        BigInteger left = new BigInteger(1, sha256(bytes));
        BigInteger base = BigInteger.valueOf(ALPHABET.length());
        StringBuilder code = new StringBuilder();
        while (code.length() < LENGTH) {
            BigInteger[] parts = left.divideAndRemainder(base);
            code.append(ALPHABET.charAt(parts[1].intValue()));
            left = parts[0];
        }
        return new SheetCode(code.toString());
    }

    private static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    @Override
    public String toString() {
        return text;
    }
}
