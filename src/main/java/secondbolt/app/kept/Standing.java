package secondbolt.app.kept;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import secondbolt.disk.Home;
import secondbolt.notebook.site.Seal;
import secondbolt.notebook.site.Seals;
import secondbolt.notebook.site.SiteWriter;

/**
 * What of a site stands as it is: projects whose folder, desk and pages are as the last run left
 * them cost reading and comparing, nothing else.
 */
public final class Standing {
    /** The seal of what is not of one project: the front page, the reference, the look. */
    private static final String WHOLE = "";

    private static final long LARGEST_BYTES = 1_000_000;

    private final Path site;
    private final Seals seals;
    private final String desk;
    private final SortedSet<String> listed;
    private final Map<String, Map<String, String>> sources = new TreeMap<>();
    private final Map<String, Seal> standing = new TreeMap<>();

    private Standing(Path site, Seals seals, String desk) {
        this.site = site;
        this.seals = seals;
        this.desk = desk;
        this.listed = SiteWriter.pathsIn(site);
    }

    /**
     * What the last run left.
     *
     * @param keep where seals are kept
     * @param site the folder of the site
     * @param desk the file of the maker's desk; it need not be there
     * @param build of the program that is at work; nothing if that cannot be told
     * @return nothing if it cannot be told which build of the program is at work
     */
    public static Optional<Standing> in(Path keep, Path site, Path desk, Optional<String> build) {
        return build.map(mark -> new Standing(site, Seals.in(keep, site, mark), deskMark(desk)));
    }

    private static String deskMark(Path desk) {
        try {
            return Home.isTaken(desk)
                    ? Seals.hash(new String(read(desk), StandardCharsets.UTF_8))
                    : "none";
        } catch (IOException e) {
            // What cannot be read here is told where the desk is read.
            return "unknown";
        }
    }

    private static byte[] read(Path desk) throws IOException {
        Path file = desk.toAbsolutePath();
        return new Home(file.getParent()).read(file, LARGEST_BYTES);
    }

    /** The paths of the files that the last run made, whatever became of them since. */
    public SortedSet<String> sealed() {
        return seals.files();
    }

    /**
     * Whether a project stands as it is; what it is made from is noted.
     *
     * @param name of its folder
     * @param folder its folder
     */
    public boolean holds(String name, Path folder) {
        Optional<Map<String, String>> read = Seals.sources(folder);
        if (read.isEmpty()) {
            return false;
        }
        Map<String, String> from = new LinkedHashMap<>();
        read.get().forEach((path, hash) -> from.put("file " + path, hash));
        from.put("desk", desk);
        sources.put(name, from);
        Optional<Seal> seal = seals.unbroken(name, from, of(name));
        seal.ifPresent(one -> standing.put(name, one));
        return seal.isPresent();
    }

    /**
     * Of projects that were made already, notes what they were made from then; what was saved since
     * is made the next time.
     *
     * @param before the state in which they were read
     * @param made the names of their folders
     */
    public void noteAsIn(Standing before, Collection<String> made) {
        for (String name : made) {
            sources.remove(name);
            Map<String, String> from = before.sources.get(name);
            if (from != null) {
                sources.put(name, from);
            }
        }
    }

    /** Whether everything stands, if these are all projects. */
    public boolean holdsWhole(List<String> projects) {
        return !SiteWriter.isUnfinished(site)
                && standing.keySet().equals(new TreeSet<>(projects))
                && seals.unbroken(WHOLE, whole(standing), rest(standing.keySet())).isPresent();
    }

    /** The projects that stand, with what was told of them. */
    public Map<String, Seal> projects() {
        return new TreeMap<>(standing);
    }

    /** How many files of the site stand with the projects that do. */
    public int files() {
        return standing.values().stream().mapToInt(seal -> seal.files().size()).sum();
    }

    /** How many files there are that are not of one project. */
    public int others() {
        return rest(standing.keySet()).size();
    }

    private SortedSet<String> of(String project) {
        SortedSet<String> own = new TreeSet<>(listed);
        own.removeIf(path -> !path.startsWith(project + "/"));
        return own;
    }

    private SortedSet<String> rest(Iterable<String> projects) {
        SortedSet<String> rest = new TreeSet<>(listed);
        projects.forEach(project -> rest.removeIf(path -> path.startsWith(project + "/")));
        return rest;
    }

    private static Map<String, String> whole(Map<String, Seal> projects) {
        Map<String, String> from = new LinkedHashMap<>();
        projects.forEach((name, seal) -> from.put("project " + name, Seals.hash(seal.toString())));
        return from;
    }

    /**
     * Seals the site as it now lies on the disk.
     *
     * @param made what was told of the projects that were made, by the names of their folders
     */
    public void keep(Map<String, List<String>> made) {
        Standing now = new Standing(site, seals, desk);
        Map<String, Seal> all = new TreeMap<>(standing);
        made.forEach(
                (name, told) -> {
                    Map<String, String> from = sources.get(name);
                    if (from != null) {
                        all.put(name, seals.seal(from, now.of(name), told));
                    }
                });
        SortedSet<String> names = new TreeSet<>(all.keySet());
        names.addAll(made.keySet());
        if (all.keySet().equals(names)) {
            all.put(WHOLE, seals.seal(whole(all), now.rest(names), List.of()));
        }
        seals.keep(all);
    }
}
