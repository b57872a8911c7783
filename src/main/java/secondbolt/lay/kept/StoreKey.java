package secondbolt.lay.kept;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Makes keys of a store: a hash of all that what is stored depends on. */
public final class StoreKey {
    private static final int LETTERS = 32;

    private StoreKey() {}

    /** The key for a text, lower-case hexadecimal. */
    public static String of(String text) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] hash = digest.digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash).substring(0, LETTERS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
