package secondbolt.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import secondbolt.app.kept.Standing;
import secondbolt.app.run.Interrupt;
import secondbolt.app.run.Progress;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.measure.Plural;
import secondbolt.notebook.Changes;
import secondbolt.notebook.Kept;
import secondbolt.notebook.Notebook;
import secondbolt.notebook.paper.Desk;
import secondbolt.notebook.site.Seal;
import secondbolt.notebook.site.SiteFile;
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
        List<Path> files = workplace.projectFiles(projects, mistakes);
        Optional<Standing> standing =
                workplace.isOneProject(projects) ? Optional.empty() : workplace.standing(out);
        List<Path> changed = files.stream().filter(file -> !holds(standing, file)).toList();
        if (standing.isPresent() && changed.isEmpty() && mistakes.isEmpty()) {
            List<String> names = files.stream().map(workplace::folderName).toList();
            if (standing.get().holdsWhole(names)) {
                int all = standing.get().files() + standing.get().others();
                tell(
                        new Told(files.size(), 0, all, 0),
                        List.of(),
                        standing.get().projects(),
                        Map.of());
                return Secondbolt.DONE;
            }
        }
        List<Workings> made = workedOut(changed, mistakes);
        Desk desk = workplace.desk(mistakes);
        if (!mistakes.isEmpty()) {
            return workplace.refuse(mistakes);
        }
        write(made, standing, desk);
        return Secondbolt.DONE;
    }

    private boolean holds(Optional<Standing> standing, Path file) {
        Path folder = workplace.folder().resolve(file).toAbsolutePath().normalize().getParent();
        return standing.filter(s -> s.holds(workplace.folderName(file), folder)).isPresent();
    }

    private List<Workings> workedOut(List<Path> files, Mistakes mistakes) {
        Progress progress = new Progress(workplace.err(), quiet);
        List<Workings> all = new ArrayList<>();
        try (Workers workers = new Workers()) {
            List<Supplier<Worked>> begun =
                    files.stream().map(file -> workers.begin(() -> worked(file))).toList();
            workers.begin(NotebookCommand::readAhead);
            for (int i = 0; i < begun.size(); i++) {
                progress.step("working out " + Workplace.name(files.get(i)), i + 1, begun.size());
                Worked worked = begun.get(i).get();
                mistakes.addAll(worked.mistakes());
                worked.workings().ifPresent(all::add);
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

    private void write(List<Workings> made, Optional<Standing> standing, Desk desk) {
        Path folder = workplace.folder().resolve(out);
        Map<String, Seal> left = standing.map(Standing::projects).orElse(Map.of());
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
        SiteWriter.Written written = SiteWriter.write(folder, site);
        if (!Interrupt.isAsked()) {
            standing.ifPresent(s -> s.keep(told));
        }
        Told done =
                new Told(
                        made.size() + left.size(),
                        written.written().size(),
                        written.unchanged() + standing.map(Standing::files).orElse(0),
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
