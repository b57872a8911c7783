package secondbolt.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.measure.Counted;
import secondbolt.notebook.Changes;
import secondbolt.notebook.Desk;
import secondbolt.notebook.Kept;
import secondbolt.notebook.Notebook;
import secondbolt.notebook.Workers;
import secondbolt.notebook.site.SiteFile;
import secondbolt.notebook.site.SiteWriter;
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
        Progress progress = new Progress(workplace.err(), quiet);
        List<Path> files = workplace.projectFiles(projects, mistakes);
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
        Desk desk = workplace.desk(mistakes);
        if (!mistakes.isEmpty()) {
            return workplace.refuse(mistakes);
        }
        write(all, desk);
        return Secondbolt.DONE;
    }

    /** A project file read and worked out; no workings if it has mistakes. */
    private record Worked(Optional<Workings> workings, List<Mistake> mistakes) {}

    private Worked worked(Path file) {
        Mistakes mistakes = new Mistakes();
        Optional<Workings> workings = workplace.work(file, mistakes, workplace.lays(true, quiet));
        return new Worked(workings, mistakes.inOrder());
    }

    private static boolean readAhead() {
        Notebook.readAhead();
        return true;
    }

    private void write(List<Workings> all, Desk desk) {
        Path folder = workplace.folder().resolve(out);
        List<SiteFile> site =
                new Notebook(Secondbolt.Version.NUMBER, Workplace.form())
                        .make(
                                all,
                                workplace.isOneProject(projects) ? Kept.in(folder, all) : List.of(),
                                desk);
        List<String> told = new ArrayList<>();
        for (Workings workings : all) {
            changes(workings, site, folder).forEach(line -> told.add("  " + line));
        }
        SiteWriter.Written written = SiteWriter.write(folder, site);
        if (!quiet) {
            tell(all, written, told);
        }
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

    private void tell(List<Workings> all, SiteWriter.Written written, List<String> changes) {
        workplace
                .out()
                .println(
                        Workplace.name(out)
                                + ": "
                                + Counted.of(all.size(), "project")
                                + ", "
                                + Counted.of(written.written().size(), "file")
                                + " written, "
                                + written.unchanged()
                                + " unchanged"
                                + (written.deleted().isEmpty()
                                        ? ""
                                        : ", " + written.deleted().size() + " deleted"));
        changes.forEach(workplace.out()::println);
        all.forEach(workings -> FindingLines.of(workings).forEach(workplace.out()::println));
    }
}
