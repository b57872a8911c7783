package secondbolt.notebook.site;

import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.regex.Pattern;
import secondbolt.file.json.JsonReader;

/**
 * Tells a file that this program made, in this version or an earlier one, by its name and by what
 * stands in it; a list of names alone could have been written by anybody.
 */
public final class MadeMark {
    private static final Set<String> PAGES = Set.of("index.html", "project-file.html");
    private static final String LOOK = "look/";

    private static final Pattern PAGE_END =
            Pattern.compile(
                    "<p>Made by Secondbolt [^<]{1,40}</p>\\s*</footer>\\s*</body>\\s*</html>\\s*$");

    private static final Pattern SHEET_BEGINNING =
            Pattern.compile(
                    "\\A%PDF-1\\.\\d\\n%[^\\n]{4}\\n1 0 obj\\n<<\\n/Type /Catalog\\n/Version /1\\.\\d\\n"
                            + "/Pages 3 0 R\\n/Lang \\([a-z]{2}\\)\\n/ViewerPreferences 4 0 R\\n");

    private static final Pattern SHEET_END =
            Pattern.compile(
                    "/Root 1 0 R\\n/Info 2 0 R\\n/ID \\[<([0-9A-F]{64})> <\\1>\\]\\n/Type /XRef\\n");

    private static final int END_BYTES = 4000;

    private MadeMark() {}

    /**
     * Whether a file of the site is one that the program made.
     *
     * @param path where it lies in the site
     * @param bytes all of it
     */
    static boolean isOn(String path, byte[] bytes) {
        String name = path.substring(path.lastIndexOf('/') + 1);
        if (path.startsWith(LOOK)) {
            return isLook(name, bytes);
        }
        if (name.endsWith(".pdf")) {
            return isOnSheet(bytes);
        }
        if (PAGES.contains(name)) {
            return PAGE_END.matcher(end(bytes)).find();
        }
        String text = new String(bytes, StandardCharsets.UTF_8);
        return switch (name) {
            case "workings.json", Contents.PATH, SiteWriter.JOURNAL -> Contents.isVersioned(text);
            case "project-file.schema.json" ->
                    JsonReader.readObject(text)
                            .filter(o -> "Project file of Secondbolt".equals(o.get("title")))
                            .isPresent();
            default -> false;
        };
    }

    /** Whether a PDF is a sheet that the program made; nothing of it is drawn. */
    public static boolean isOnSheet(byte[] bytes) {
        return SHEET_BEGINNING.matcher(beginning(bytes)).find()
                && SHEET_END.matcher(end(bytes)).find();
    }

    private static boolean isLook(String name, byte[] bytes) {
        String beginning = beginning(bytes);
        return switch (name) {
            case "style.css" -> beginning.startsWith("/* The notebook's look:");
            case "SourceSans3-Regular.woff2", "SourceSans3-Semibold.woff2" ->
                    beginning.startsWith("wOF2");
            case "SourceSans3-LICENSE.md" -> beginning.startsWith("Copyright ");
            default -> false;
        };
    }

    private static String beginning(byte[] bytes) {
        return new String(bytes, 0, Math.min(bytes.length, END_BYTES), StandardCharsets.ISO_8859_1);
    }

    private static String end(byte[] bytes) {
        int length = Math.min(bytes.length, END_BYTES);
        return new String(bytes, bytes.length - length, length, StandardCharsets.ISO_8859_1);
    }
}
