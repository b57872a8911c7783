package secondbolt.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.Supplier;
import secondbolt.app.kept.LayFolder;
import secondbolt.app.kept.Standing;
import secondbolt.app.run.LayProgress;
import secondbolt.app.run.Memory;
import secondbolt.app.terminal.Terminal;
import secondbolt.disk.BarredException.Bar;
import secondbolt.disk.Home;
import secondbolt.fault.Fault;
import secondbolt.file.Form;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.Place;
import secondbolt.file.source.Visible;
import secondbolt.lay.kept.LayDesk;
import secondbolt.lay.plan.PlanFile;
import secondbolt.measure.Plural;
import secondbolt.notebook.paper.Desk;
import secondbolt.notebook.site.SiteWriter;
import secondbolt.project.Project;
import secondbolt.project.ProjectFiles;
import secondbolt.project.ProjectSection;
import secondbolt.project.Topics;
import secondbolt.project.Workings;
import secondbolt.project.Workshop;

/**
 * The working folder and the streams, with what every command does: finding projects, reading the
 * desk, telling mistakes.
 *
 * @param folder paths are read from here
 * @param out for what was asked for
 * @param err for mistakes and progress
 */
record Workplace(Path folder, Terminal out, Terminal err) {
    private static final long LARGEST_BYTES = 200_000_000;

    private static final String DESK_FILE = "local.yaml";

    /** The project files of a folder that holds one, or of folders that each hold one, by name. */
    List<Path> projectFiles(Path path, Mistakes mistakes) {
        return new ProjectFiles(folder).in(path, new TreeSet<>(), mistakes);
    }

    /**
     * The same, and a folder of which there are pages is told if it has lost its project file.
     *
     * @param site where the pages are
     */
    List<Path> projectFiles(Path path, Path site, Mistakes mistakes) {
        SortedSet<String> shown = new TreeSet<>();
        for (String page : SiteWriter.pathsIn(folder.resolve(site))) {
            shown.add(page.substring(0, Math.max(0, page.indexOf('/'))));
        }
        return new ProjectFiles(folder).in(path, shown, mistakes);
    }

    /** Whether a path names one project, not a folder of projects. */
    boolean isOneProject(Path path) {
        return new ProjectFiles(folder).isOne(path);
    }

    /**
     * What lays are worked out with.
     *
     * @param isWritten whether the working folder may be written to
     * @param quiet whether nobody wants to know how far it is
     */
    @SuppressWarnings("SystemConsoleNull") // Where it is never null, a log only gets more lines.
    LayDesk lays(boolean isWritten, boolean quiet) {
        return new LayDesk(
                new LayFolder(folder, isWritten),
                Runtime.getRuntime().availableProcessors(),
                new LayProgress(err.unguarded(), !quiet && System.console() != null));
    }

    /** How a project file is written. */
    static Form<Project> form() {
        return ProjectSection.form(Topics.all(LayDesk.inMemory()));
    }

    /** How the files beside it are written, by their names. */
    static Map<String, Form<?>> beside() {
        Map<String, Form<?>> beside = new LinkedHashMap<>();
        beside.put(PlanFile.NAME, PlanFile.ROOT);
        beside.put(DESK_FILE, DeskSection.ROOT);
        return beside;
    }

    /** Reads and works out a project; nothing if it has mistakes. */
    Optional<Workings> work(Path file, Mistakes mistakes, LayDesk desk) {
        String named = folderName(file);
        if (named.codePoints().anyMatch(Visible::isUnseen)) {
            mistakes.add(
                    new Mistake(
                            Place.beginningOf(name(file)),
                            "a folder whose name holds a letter that nobody sees: `" + named + "`",
                            "a name of letters, figures and spaces",
                            ""));
            return Optional.empty();
        }
        return guarded(
                name(file),
                mistakes,
                () ->
                        new Workshop(Topics.all(desk))
                                .work(folder.resolve(file), name(file), named, mistakes));
    }

    /**
     * Does the work on a project: a failure of the program and a want of memory are told with its
     * name, and the work on others goes on.
     */
    static <T> Optional<T> guarded(String file, Mistakes mistakes, Supplier<Optional<T>> work) {
        try {
            return Fault.during("the project", work);
        } catch (Fault e) {
            mistakes.add(Mistake.ofProgram(Place.beginningOf(file), String.join(", ", e.at())));
        } catch (OutOfMemoryError e) {
            mistakes.add(
                    new Mistake(
                            Place.beginningOf(file),
                            "more to work out than Java's memory holds (" + Memory.given() + ")",
                            "fewer or simpler pieces; or more memory, as by " + Memory.MORE,
                            ""));
        }
        return Optional.empty();
    }

    /** What of a site stands as the last run left it. */
    Optional<Standing> standing(Path site) {
        return Standing.in(
                folder.resolve(LayFolder.KEEP),
                folder.resolve(site),
                folder.resolve(DESK_FILE),
                Program.mark());
    }

    /** The name of the folder a project file lies in, which names its pages. */
    String folderName(Path file) {
        Path absolute = folder.resolve(file).toAbsolutePath().normalize();
        Path parent = absolute.getParent().getFileName();
        return parent == null ? "project" : parent.toString();
    }

    /** What lies on the maker's desk: {@code local.yaml} of the working folder, if there is one. */
    Desk desk(Mistakes mistakes) {
        Path file = folder.resolve(DESK_FILE);
        return Home.isTaken(file)
                ? DeskSection.read(file, DESK_FILE, mistakes).orElse(Desk.UNKNOWN)
                : Desk.UNKNOWN;
    }

    /**
     * Where a file that was asked for is to be written.
     *
     * @param ours whether a file that stands there may be replaced
     * @throws UncheckedIOException with its name, if what stands there is no such file
     */
    Path target(Path asked, Predicate<byte[]> ours, String right) {
        Path target = folder.resolve(asked).toAbsolutePath().normalize();
        try {
            if (target.getParent() == null || !Files.isDirectory(target.getParent())) {
                throw refused(asked, "the folder it would lie in is not there", right);
            }
            Path home = folder.toAbsolutePath().normalize();
            Optional<Bar> bar =
                    target.startsWith(home) ? new Home(home).bar(target) : Home.barAt(target);
            if (bar.isPresent()) {
                throw refused(asked, bar.get().words(), right);
            }
            if (Home.isTaken(target)
                    && !ours.test(new Home(target.getParent()).read(target, LARGEST_BYTES))) {
                throw refused(asked, "not made by Secondbolt, so it is left alone", right);
            }
            return target;
        } catch (IOException e) {
            throw refused(asked, "a file that cannot be read", right);
        }
    }

    private static UncheckedIOException refused(Path asked, String found, String right) {
        String words = name(asked) + " cannot be written: " + found + "; " + right;
        return new UncheckedIOException(words, new IOException(words));
    }

    /**
     * The folder of a site.
     *
     * @param projects which are read; the site does not lie among them
     * @throws UncheckedIOException with its name, if it cannot be one
     */
    Path site(Path out, Path projects) {
        Path home = folder.toAbsolutePath().normalize();
        Path site = folder.resolve(out).toAbsolutePath().normalize();
        String right = "name another folder with --out";
        if (site.getParent() == null) {
            throw refused(out, "the whole disk", right);
        }
        if (Home.isTaken(site) && !Files.isDirectory(site)) {
            Optional<Bar> bar = Home.barAt(site);
            String found = bar.map(Bar::words).orElse("a file");
            throw refused(out, found + " stands where the folder of the site belongs", right);
        }
        if (site.startsWith(home) && new Home(home).leadsOut(site)) {
            throw refused(out, "a link that leads out of the working folder", right);
        }
        Path read = folder.resolve(projects).toAbsolutePath().normalize();
        boolean isAmong =
                ProjectFiles.isIn(site)
                        || site.equals(read)
                        || (site.startsWith(read) && !home.startsWith(read));
        if (isAmong) {
            throw refused(out, "it lies among the projects, which are only read", right);
        }
        return site;
    }

    /** Tells the first of the mistakes, and how many there are. */
    int refuse(Mistakes mistakes) {
        List<Mistake> told = mistakes.inOrder();
        told.forEach(err::println);
        int count = mistakes.count();
        if (count > told.size()) {
            err.println("and " + (count - told.size()) + " more");
        }
        err.println(Plural.of(count, "mistake"));
        return Secondbolt.REFUSED;
    }

    /** A path as messages name it, the same on every machine. */
    static String name(Path path) {
        return Visible.escaped(path.toString().replace('\\', '/'));
    }
}
