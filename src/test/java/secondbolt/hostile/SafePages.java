package secondbolt.hostile;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What pages and sheets must not hold, whoever wrote their words: nothing runs, nothing is loaded
 * from elsewhere, and links lead to web pages, mail and neighbouring files only.
 */
final class SafePages {
    private static final Pattern TAG = Pattern.compile("<[a-zA-Z/!?][^>]*>");
    private static final Pattern BARRED =
            Pattern.compile(
                    "<(script|iframe|object|embed|base|form|applet|frame|audio|video|foreignobject)"
                            + "[\\s>/]|<meta[^>]*http-equiv|\\son[a-z]+\\s*=(?=[^\"]*(\"[^\"]*\"[^\"]*)*$)");
    private static final Pattern LINK = Pattern.compile("<a\\s[^>]*?href=\"([^\"]*)\"");
    private static final Pattern LOADED =
            Pattern.compile("<(?!a\\s)[a-z]+\\s[^>]*?(?:href|src|srcset|data|poster)=\"([^\"]*)\"");
    private static final Pattern SCHEME =
            Pattern.compile("^\\s*([a-z][a-z0-9+.-]*):.*", Pattern.DOTALL);
    private static final List<String> SCHEMES = List.of("http", "https", "mailto");

    private SafePages() {}

    /** Looks through all pages and sheets of a site. */
    static void check(Path site) {
        try (Stream<Path> all = Files.walk(site)) {
            for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
                byte[] bytes = Files.readAllBytes(file);
                if (file.toString().endsWith(".html")) {
                    page(file, new String(bytes, StandardCharsets.UTF_8).toLowerCase(Locale.ROOT));
                } else if (file.toString().endsWith(".pdf")) {
                    sheet(file, new String(bytes, StandardCharsets.ISO_8859_1));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void page(Path file, String text) {
        Matcher tags = TAG.matcher(text);
        while (tags.find()) {
            assertFalse(BARRED.matcher(tags.group()).find(), () -> file + ": " + tags.group());
        }
        Matcher links = LINK.matcher(text);
        while (links.find()) {
            Matcher scheme = SCHEME.matcher(links.group(1));
            boolean isSafe = !scheme.matches() || SCHEMES.contains(scheme.group(1));
            assertTrue(isSafe, () -> file + ": " + links.group());
        }
        Matcher loaded = LOADED.matcher(text);
        while (loaded.find()) {
            boolean isNear = !loaded.group(1).contains(":") && !loaded.group(1).startsWith("//");
            assertTrue(isNear, () -> file + ": " + loaded.group());
        }
    }

    private static void sheet(Path file, String text) {
        assertTrue(text.startsWith("%PDF-"), file::toString);
        for (String barred : List.of("/JavaScript", "/JS ", "/Launch", "/OpenAction", "/URI")) {
            assertFalse(text.contains(barred), () -> file + ": " + barred);
        }
    }
}
