package secondbolt.notebook.site;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import secondbolt.file.json.Json;
import secondbolt.file.json.JsonReader;
import secondbolt.file.source.Visible;

/**
 * The list of all files a run made, kept in the site, so that the next run knows which files are
 * its own. What is not on it was made by someone else and is never touched; what is on it is
 * touched only if it looks like a file of this program, too.
 */
public final class Contents {
    /** Where it lies in the site. */
    public static final String PATH = "contents.json";

    private static final int LONGEST_PATH = 1_000;

    private static final String VERSION = "secondbolt";
    private static final String FILES = "files";

    private Contents() {}

    /**
     * The list of these files and itself.
     *
     * @param version of the program
     */
    public static SiteFile of(String version, List<SiteFile> files) {
        return of(version, files, List.of());
    }

    /**
     * The list of these files, itself, and files of earlier runs that stay as they are.
     *
     * @param version of the program
     * @param kept the paths of those
     */
    public static SiteFile of(String version, List<SiteFile> files, Collection<String> kept) {
        SortedSet<String> paths = new TreeSet<>(kept);
        files.forEach(file -> paths.add(file.path()));
        paths.add(PATH);
        return SiteFile.text(PATH, write(version, paths));
    }

    static String write(String version, Collection<String> paths) {
        Map<String, Object> contents = new LinkedHashMap<>();
        contents.put(VERSION, version);
        contents.put(FILES, List.copyOf(paths));
        return Json.write(contents);
    }

    /**
     * The paths on a list, but for those that could lead out of the site or name no file; none if
     * the text is not a list of this program.
     */
    static SortedSet<String> paths(String text) {
        SortedSet<String> paths = new TreeSet<>();
        JsonReader.readObject(text)
                .filter(Contents::isVersioned)
                .map(object -> object.get(FILES))
                .ifPresent(files -> paths.addAll(texts(files)));
        paths.removeIf(path -> !SiteFile.isSafe(path) || !isName(path));
        return paths;
    }

    /** Whether a text is an object of JSON that this program wrote, in whatever version. */
    static boolean isVersioned(String text) {
        return JsonReader.readObject(text).filter(Contents::isVersioned).isPresent();
    }

    private static boolean isVersioned(Map<String, Object> object) {
        return object.get(VERSION) instanceof String;
    }

    /** Whether this machine can look for it, and a page or a terminal show it. */
    private static boolean isName(String path) {
        try {
            return path.length() <= LONGEST_PATH
                    && path.codePoints().noneMatch(Visible::isUnseen)
                    && !Path.of(path).isAbsolute();
        } catch (InvalidPathException e) {
            return false;
        }
    }

    private static List<String> texts(Object files) {
        List<String> texts = new ArrayList<>();
        if (files instanceof List<?> list) {
            list.forEach(path -> texts.add(String.valueOf(path)));
        }
        return texts;
    }
}
