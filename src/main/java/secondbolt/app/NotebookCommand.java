package secondbolt.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import secondbolt.app.kept.Standing;
import secondbolt.app.run.Interrupt;
import secondbolt.app.run.Progress;
import secondbolt.file.source.Mistakes;
import secondbolt.measure.Plural;
import secondbolt.notebook.Changes;
import secondbolt.notebook.Kept;
import secondbolt.notebook.Notebook;
import secondbolt.notebook.paper.Desk;
import secondbolt.notebook.site.Seal;
import secondbolt.notebook.site.SiteFile;
import secondbolt.notebook.site.SiteLock;
import secondbolt.notebook.site.SiteWriter;
import secondbolt.parallel.Workers;
import secondbolt.project.Workings;

/** Makes or remakes the notebook. */
@Command(
        name = "notebook",
        mixinStandardHelpOptions = true,
        description = {
            "Makes the notebook: a page and the sheets of each project, and an index.",
            "Of one project alone, the pages of the others stay as they are.",
            "Only files that changed are written, and it is told which printed sheets are stale.",
            "If any project has a mistake, all mistakes are told and nothing is written.",
            ""
        })
final class NotebookCommand implements Callable<Integer> {
    /** Two minutes. */
    private static final int MOST_TRIES = 1200;

    private static final String NOT_OURS = ": not made by Secondbolt, so it stays";

    private static final String CORRECTED =
            "The sheets in it are drawn for a printer that prints true; for yours, which local.yaml"
                    + " tells of, make them with `secondbolt sheet PROJECT --all`.";

    private final Workplace workplace;

    @Parameters(
            arity = "0..1",
            paramLabel = "PROJECTS",
            defaultValue = "projects",
            description = "a folder of project folders, or one project (default: projects)")
    private Path projects;

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            defaultValue = "site",
            description = "where the notebook goes (default: site)")
    private Path out;

    @Option(names = "--quiet", description = "tells mistakes only")
    private boolean quiet;

    NotebookCommand(Workplace workplace) {
        this.workplace = workplace;
    }

    @Override
    public Integer call() {
        Mistakes mistakes = new Mistakes();
        Path site = new Targets(workplace.folder()).site(out, projects);
        List<Path> files = workplace.projectFiles(projects, out, mistakes);
        Optional<Standing> standing = standing();
        List<Path> changed = files.stream().filter(file -> !holds(standing, file)).toList();
        if (changed.isEmpty() && mistakes.isEmpty() && isWhole(standing, files)) {
            Standing all = standing.orElseThrow();
            tell(
                    new Told(files.size(), 0, all.files() + all.others(), 0),
                    List.of(),
                    all.projects(),
                    Map.of());
            return Secondbolt.DONE;
        }
        Map<Path, Workings> made = workedOut(changed, mistakes);
        workplace.desk(mistakes);
        if (!mistakes.isEmpty()) {
            return workplace.refuse(mistakes);
        }
        return SiteLock.during(
                site, MOST_TRIES, this::tellWaiting, () -> written(files, made, standing));
    }

    private void tellWaiting() {
        workplace.err().println("another run is writing into " + Workplace.name(out) + "; waiting");
        workplace.err().flush();
    }

    private Optional<Standing> standing() {
        return workplace.isOneProject(projects) ? Optional.empty() : workplace.standing(out);
    }

    private boolean isWhole(Optional<Standing> standing, List<Path> files) {
        List<String> names = files.stream().map(workplace::folderName).toList();
        return standing.filter(s -> s.holdsWhole(names)).isPresent();
    }

    /** What another run may have written meanwhile is looked at again, now that none can. */
    private int written(List<Path> files, Map<Path, Workings> made, Optional<Standing> before) {
        Mistakes mistakes = new Mistakes();
        Optional<Standing> standing = standing();
        List<Path> changed =
                files.stream()
                        .filter(file -> !holds(standing, file) && !made.containsKey(file))
                        .toList();
        List<String> read = made.keySet().stream().map(workplace::folderName).toList();
        standing.ifPresent(now -> before.ifPresent(then -> now.noteAsIn(then, read)));
        Map<Path, Workings> all = new HashMap<>(made);
        all.putAll(workedOut(changed, mistakes));
        Desk desk = workplace.desk(mistakes);
        if (!mistakes.isEmpty()) {
            return workplace.refuse(mistakes);
        }
        Map<String, Seal> left = new TreeMap<>(standing.map(Standing::projects).orElse(Map.of()));
        all.keySet().forEach(file -> left.remove(workplace.folderName(file)));
        List<Workings> inOrder = files.stream().filter(all::containsKey).map(all::get).toList();
        write(inOrder, left, standing, desk);
        if (desk.correction().isNeeded() && !quiet) {
            workplace.out().println(CORRECTED);
        }
        return Secondbolt.DONE;
    }

    private boolean holds(Optional<Standing> standing, Path file) {
        Path folder = workplace.folder().resolve(file).toAbsolutePath().normalize().getParent();
        return standing.filter(s -> s.holds(workplace.folderName(file), folder)).isPresent();
    }

    private Map<Path, Workings> workedOut(List<Path> files, Mistakes mistakes) {
        Progress progress = new Progress(workplace.err(), quiet);
        Map<Path, Workings> all = new HashMap<>();
        try (Workers workers = new Workers()) {
            List<Supplier<Worked>> begun =
                    files.stream().map(file -> workers.begin(() -> worked(file))).toList();
            workers.begin(NotebookCommand::readAhead);
            for (int i = 0; i < begun.size(); i++) {
                Path file = files.get(i);
                progress.step("working out " + Workplace.name(file), i + 1, begun.size());
                Worked worked = begun.get(i).get();
                mistakes.addAll(worked.mistakes());
                worked.workings().ifPresent(workings -> all.put(file, workings));
            }
        }
        return all;
    }

    /** A project file read and worked out; no workings if it has mistakes. */
    private record Worked(Optional<Workings> workings, Mistakes mistakes) {}

    private Worked worked(Path file) {
        Mistakes mistakes = new Mistakes();
        Optional<Workings> workings = workplace.work(file, mistakes, workplace.lays(true, quiet));
        return new Worked(workings, mistakes);
    }

    private static boolean readAhead() {
        Notebook.readAhead();
        return true;
    }

    private void write(
            List<Workings> made, Map<String, Seal> left, Optional<Standing> standing, Desk desk) {
        Path folder = workplace.folder().resolve(out);
        List<Kept> kept =
                Kept.in(folder, made).stream()
                        .filter(
                                one ->
                                        workplace.isOneProject(projects)
                                                || left.containsKey(one.shown().folder()))
                        .toList();
        List<SiteFile> site =
                new Notebook(Secondbolt.Version.NUMBER, Workplace.form(), Workplace.beside())
                        .make(made, kept, desk);
        List<String> changes = new ArrayList<>();
        Map<String, List<String>> told = new TreeMap<>();
        for (Workings workings : made) {
            changes(workings, site, folder).forEach(line -> changes.add("  " + line));
            told.put(workings.folder(), FindingLines.of(workings));
        }
        SortedSet<String> sealed = standing.map(Standing::sealed).orElseGet(TreeSet::new);
        SiteWriter.Written written = SiteWriter.write(folder, site, sealed);
        written.left()
                .forEach(
                        path ->
                                workplace
                                        .err()
                                        .println(Workplace.name(out) + "/" + path + NOT_OURS));
        if (!Interrupt.isAsked()) {
            standing.ifPresent(s -> s.keep(told));
        }
        Told done =
                new Told(
                        made.size() + left.size(),
                        written.written().size(),
                        written.unchanged()
                                + left.values().stream().mapToInt(s -> s.files().size()).sum(),
                        written.deleted().size());
        tell(done, changes, left, told);
    }

    private static List<String> changes(Workings workings, List<SiteFile> site, Path folder) {
        String path = workings.folder() + "/" + Notebook.WORKINGS;
        Optional<String> now =
                site.stream().filter(f -> f.path().equals(path)).map(SiteFile::text).findFirst();
        List<String> lines = new ArrayList<>();
        now.ifPresent(
                text ->
                        Changes.between(SiteWriter.textIn(folder, path), text)
                                .forEach(line -> lines.add(workings.folder() + ": " + line)));
        return lines;
    }

    /** What was done, in numbers. */
    private record Told(int projects, int written, int unchanged, int deleted) {}

    private void tell(
            Told done,
            List<String> changes,
            Map<String, Seal> left,
            Map<String, List<String>> made) {
        if (quiet) {
            return;
        }
        workplace
                .out()
                .println(
                        Workplace.name(out)
                                + ": "
                                + Plural.of(done.projects(), "project")
                                + ", "
                                + Plural.of(done.written(), "file")
                                + " written, "
                                + done.unchanged()
                                + " unchanged"
                                + (done.deleted() == 0 ? "" : ", " + done.deleted() + " deleted"));
        changes.forEach(workplace.out()::println);
        Map<String, List<String>> findings = new TreeMap<>(made);
        left.forEach((name, seal) -> findings.put(name, seal.told()));
        findings.values().forEach(lines -> lines.forEach(workplace.out()::println));
    }
}
