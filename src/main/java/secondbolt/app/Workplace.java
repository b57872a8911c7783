package secondbolt.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Supplier;
import secondbolt.app.kept.LayFolder;
import secondbolt.app.kept.Standing;
import secondbolt.app.run.LayProgress;
import secondbolt.app.run.Memory;
import secondbolt.app.terminal.Terminal;
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
    private static final String DESK_FILE = "local.yaml";

    /**
     * The project files of a folder that holds one, or of folders that each hold one, by name. What
     * their folders may not be called is told.
     */
    List<Path> projectFiles(Path path, Mistakes mistakes) {
        return projectFiles(List.of(path), mistakes);
    }

    /** The same of several folders. */
    List<Path> projectFiles(List<Path> paths, Mistakes mistakes) {
        List<Path> files = new ArrayList<>();
        for (Path path : paths) {
            files.addAll(new ProjectFiles(folder).in(path, new TreeSet<>(), mistakes));
        }
        return named(files, mistakes);
    }

    private List<Path> named(List<Path> files, Mistakes mistakes) {
        new ProjectFolders(folder).check(files, mistakes);
        return files;
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
        return named(new ProjectFiles(folder).in(path, shown, mistakes), mistakes);
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
        return guarded(
                name(file),
                mistakes,
                () ->
                        new Workshop(Topics.all(desk))
                                .work(
                                        folder.resolve(file),
                                        name(file),
                                        folderName(file),
                                        mistakes));
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
                            Memory.exceeded(),
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
        return new ProjectFolders(folder).name(file);
    }

    /** What lies on the maker's desk: {@code local.yaml} of the working folder, if there is one. */
    Desk desk(Mistakes mistakes) {
        Path file = folder.resolve(DESK_FILE);
        return Home.isTaken(file)
                ? DeskSection.read(file, DESK_FILE, mistakes).orElse(Desk.UNKNOWN)
                : Desk.UNKNOWN;
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
