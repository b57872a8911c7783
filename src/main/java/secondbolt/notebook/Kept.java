package secondbolt.notebook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
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
    private static final String PAGE = "index.html";

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

    /** Whether there is a page to show. */
    boolean hasPage() {
        return paths.contains(shown.folder() + "/" + PAGE);
    }

    private static Kept of(Path out, String folder, SortedSet<String> paths) {
        KeptWorkings workings =
                SiteWriter.textIn(out, folder + "/" + Notebook.WORKINGS)
                        .flatMap(KeptWorkings::read)
                        .orElse(new KeptWorkings(Map.of()));
        return new Kept(
                new IndexPage.ProjectView(
                        folder,
                        workings.text("title").orElse(folder),
                        workings.text("summary").orElse(""),
                        workings.stops(),
                        workings.sheets().size(),
                        workings.pages(),
                        workings.isPersonal()),
                paths);
    }
}
