package secondbolt.notebook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import secondbolt.file.json.JsonReader;
import secondbolt.notebook.site.SiteWriter;
import secondbolt.project.Workings;
import secondbolt.worksheet.SheetName;

/**
 * A project that an earlier run put into the site and this one leaves as it is.
 *
 * @param shown what the front page shows of it, as its workings tell
 * @param paths its files
 */
public record Kept(IndexPage.ProjectView shown, SortedSet<String> paths) {
    /** Copies the paths. */
    public Kept {
        paths = new TreeSet<>(paths);
    }

    /**
     * The projects of a site but for those that are made now, by the name of their folder.
     *
     * @param out the folder of the site
     * @param made what is made now
     */
    public static List<Kept> in(Path out, List<Workings> made) {
        Set<String> now = new TreeSet<>();
        now.add(SheetName.folded(Look.FOLDER));
        made.forEach(project -> now.add(SheetName.folded(project.folder())));
        SortedMap<String, SortedSet<String>> folders = new TreeMap<>();
        for (String path : SiteWriter.pathsIn(out)) {
            int end = path.indexOf('/');
            if (end > 0 && !now.contains(SheetName.folded(path.substring(0, end)))) {
                folders.computeIfAbsent(path.substring(0, end), f -> new TreeSet<>()).add(path);
            }
        }
        List<Kept> kept = new ArrayList<>();
        folders.forEach((folder, paths) -> kept.add(of(out, folder, paths)));
        return List.copyOf(kept);
    }

    private static Kept of(Path out, String folder, SortedSet<String> paths) {
        Optional<Map<String, Object>> workings =
                SiteWriter.textIn(out, folder + "/" + Notebook.WORKINGS)
                        .flatMap(JsonReader::readObject);
        List<Map<?, ?>> sheets = maps(workings, "sheets");
        int pages =
                sheets.stream()
                        .map(sheet -> sheet.get("pages"))
                        .mapToInt(count -> count instanceof Number n ? n.intValue() : 0)
                        .sum();
        int stops =
                (int)
                        maps(workings, "findings").stream()
                                .filter(finding -> "stop".equals(finding.get("level")))
                                .count();
        return new Kept(
                new IndexPage.ProjectView(
                        folder,
                        text(workings, "title").orElse(folder),
                        text(workings, "summary").orElse(""),
                        stops,
                        sheets.size(),
                        pages),
                paths);
    }

    private static Optional<String> text(Optional<Map<String, Object>> workings, String key) {
        return workings.map(w -> w.get(key)).filter(String.class::isInstance).map(String::valueOf);
    }

    private static List<Map<?, ?>> maps(Optional<Map<String, Object>> workings, String key) {
        List<Map<?, ?>> maps = new ArrayList<>();
        if (workings.map(w -> w.get(key)).orElse(null) instanceof List<?> list) {
            for (Object item : list) {
                if (item instanceof Map<?, ?> map) {
                    maps.add(map);
                }
            }
        }
        return maps;
    }
}
