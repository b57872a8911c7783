package secondbolt.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import secondbolt.app.kept.LayFolder;
import secondbolt.app.kept.Standing;
import secondbolt.file.Form;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.Place;
import secondbolt.lay.kept.LayDesk;
import secondbolt.lay.plan.PlanFile;
import secondbolt.measure.Plural;
import secondbolt.notebook.FolderName;
import secondbolt.notebook.paper.Desk;
import secondbolt.project.Project;
import secondbolt.project.ProjectReader;
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
record Workplace(Path folder, PrintWriter out, PrintWriter err) {
    /** What file managers and editors make of its name: the other ending, a second, capitals. */
    private static final Pattern NEARLY =
            Pattern.compile("(?i)project\\.(yml|yaml|yaml\\.txt|yml\\.txt|txt)");

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
        paths.forEach(path -> files.addAll(found(path, mistakes)));
        Map<Path, List<Path>> beside = new LinkedHashMap<>();
        for (Path file : files) {
            FolderName.fault(folderName(file)).ifPresent(f -> tell(file, f, mistakes));
            Path above = folder.resolve(file).toAbsolutePath().normalize().resolve("../..");
            List<Path> there = beside.computeIfAbsent(above.normalize(), same -> new ArrayList<>());
            if (there.stream().noneMatch(f -> folderName(f).equals(folderName(file)))) {
                there.add(file);
            }
        }
        beside.values().forEach(there -> tellClashes(there, mistakes));
        return files;
    }

    private void tellClashes(List<Path> beside, Mistakes mistakes) {
        Map<String, FolderName.Fault> clashes =
                FolderName.clashes(beside.stream().map(this::folderName).toList());
        for (Path file : beside) {
            Optional.ofNullable(clashes.get(folderName(file)))
                    .ifPresent(clash -> tell(file, clash, mistakes));
        }
    }

    private static void tell(Path file, FolderName.Fault fault, Mistakes mistakes) {
        mistakes.add(new Mistake(Place.beginningOf(name(file)), fault.found(), fault.right(), ""));
    }

    private List<Path> found(Path path, Mistakes mistakes) {
        Path at = folder.resolve(path);
        if (Files.isRegularFile(at)) {
            return List.of(path);
        }
        if (Files.isRegularFile(at.resolve(ProjectReader.FILE))) {
            return List.of(path.resolve(ProjectReader.FILE));
        }
        if (tellNearly(path, mistakes)) {
            return List.of();
        }
        List<Path> found = new ArrayList<>();
        boolean isNearly = false;
        for (String name : folderNames(at)) {
            isNearly |= tellNearly(path.resolve(name), mistakes);
            if (Files.isRegularFile(at.resolve(name).resolve(ProjectReader.FILE))) {
                found.add(path.resolve(name).resolve(ProjectReader.FILE));
            }
        }
        if (found.isEmpty() && !isNearly) {
            String right =
                    "a folder with a " + ProjectReader.FILE + ", or a folder of such folders";
            mistakes.add(
                    new Mistake(
                            Place.beginningOf(name(path)),
                            Files.exists(at) ? "no project file" : "no such file or folder",
                            right,
                            ""));
        }
        return found;
    }

    /** Asks about a file that was meant to be the project file and is not named so. */
    private boolean tellNearly(Path path, Mistakes mistakes) {
        Path at = folder.resolve(path);
        if (Files.isRegularFile(at.resolve(ProjectReader.FILE))) {
            return false;
        }
        List<String> nearly =
                folderNames(at).stream().filter(n -> NEARLY.matcher(n).matches()).toList();
        nearly.forEach(
                name ->
                        mistakes.add(
                                new Mistake(
                                        Place.beginningOf(name(path.resolve(name))),
                                        "`" + name + "`, which is not read",
                                        "the same file named `" + ProjectReader.FILE + "`",
                                        "")));
        return !nearly.isEmpty();
    }

    /** Whether a path names one project, not a folder of projects. */
    boolean isOneProject(Path path) {
        Path at = folder.resolve(path);
        return Files.isRegularFile(at) || Files.isRegularFile(at.resolve(ProjectReader.FILE));
    }

    private static List<String> folderNames(Path at) {
        if (!Files.isDirectory(at)) {
            return List.of();
        }
        try (Stream<Path> children = Files.list(at)) {
            return children.map(child -> child.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(at + " cannot be listed", e);
        }
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
                new LayProgress(err, !quiet && System.console() != null));
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
        return new Workshop(Topics.all(desk))
                .work(folder.resolve(file), name(file), folderName(file), mistakes);
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
        return Files.exists(file)
                ? DeskSection.read(file, DESK_FILE, mistakes).orElse(Desk.UNKNOWN)
                : Desk.UNKNOWN;
    }

    /** Tells all mistakes, and how many there are. */
    int refuse(Mistakes mistakes) {
        mistakes.inOrder().forEach(err::println);
        int count = mistakes.count();
        err.println(Plural.of(count, "mistake"));
        return Secondbolt.REFUSED;
    }

    /** A path as messages name it, the same on every machine. */
    static String name(Path path) {
        return path.toString().replace('\\', '/');
    }
}
