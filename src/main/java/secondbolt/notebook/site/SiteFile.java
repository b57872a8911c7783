package secondbolt.notebook.site;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** One file of the site, made but not yet written. */
public final class SiteFile {
    private final String path;
    private final byte[] content;

    private SiteFile(String path, byte[] content) {
        if (!isSafe(path)) {
            throw new IllegalArgumentException("not a path inside the site: " + path);
        }
        this.path = path;
        this.content = content;
    }

    /**
     * A file of text, in UTF-8.
     *
     * @param path from the site's folder, with {@code /} between its parts
     * @throws IllegalArgumentException if the path could lead out of the site
     */
    public static SiteFile text(String path, String text) {
        return new SiteFile(path, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * A file of bytes.
     *
     * @param path from the site's folder, with {@code /} between its parts
     * @throws IllegalArgumentException if the path could lead out of the site
     */
    public static SiteFile bytes(String path, byte[] content) {
        return new SiteFile(path, content.clone());
    }

    /** Whether a path is relative and has no part that leads upwards or to another drive. */
    static boolean isSafe(String path) {
        return path.chars().noneMatch(c -> c == '\\' || c == ':' || c < ' ')
                && List.of(path.split("/", -1)).stream()
                        .noneMatch(part -> part.isBlank() || part.equals(".") || part.equals(".."));
    }

    /** Where it lies in the site, with {@code /} between the parts. */
    public String path() {
        return path;
    }

    /** Its bytes. */
    public byte[] content() {
        return content.clone();
    }

    /** Its bytes as text. */
    public String text() {
        return new String(content, StandardCharsets.UTF_8);
    }

    boolean holds(byte[] bytes) {
        return Arrays.equals(content, bytes);
    }

    @Override
    public String toString() {
        return path;
    }
}
