package secondbolt.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import secondbolt.disk.AtomicFile;
import secondbolt.draw.paper.Paper;
import secondbolt.file.source.Mistakes;
import secondbolt.measure.Plural;
import secondbolt.notebook.PrintedSheet;
import secondbolt.notebook.paper.Desk;
import secondbolt.notebook.paper.PaperChoice;
import secondbolt.notebook.site.MadeMark;
import secondbolt.project.Workings;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.SheetName;

/** Makes sheets. */
@Command(
        name = "sheet",
        mixinStandardHelpOptions = true,
        description = {
            "Makes sheets of a project as PDFs, true to scale, corrected for the printer that",
            "local.yaml tells of. Those of the notebook are drawn for one that prints true.",
            ""
        })
final class SheetCommand implements Callable<Integer> {
    private final Workplace workplace;

    @Parameters(index = "0", paramLabel = "PROJECT", description = "a project's folder or file")
    private Path project;

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "SHEET",
            description = "the names of the sheets")
    private List<String> names = List.of();

    @Option(names = "--all", description = "all sheets of the project")
    private boolean all;

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            description =
                    "a4, a3, letter, legal, tabloid, a0, 36in-roll, 24in-roll or a4+letter"
                            + " (default: local.yaml's, else the project's)")
    private String paper;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description =
                    "where it goes (default: the sheet's name with .pdf); of several, the folder"
                            + " they go to (default: this one)")
    private Path out;

    @Option(names = "--quiet", description = "tells mistakes only")
    private boolean quiet;

    @Spec private CommandSpec spec;

    SheetCommand(Workplace workplace) {
        this.workplace = workplace;
    }

    @Override
    public Integer call() {
        Optional<Paper> asked = Optional.ofNullable(paper).map(this::paper);
        Mistakes mistakes = new Mistakes();
        List<Path> files = workplace.projectFiles(project, mistakes);
        List<Workings> found = new ArrayList<>();
        files.forEach(
                file ->
                        workplace
                                .work(file, mistakes, workplace.lays(true, quiet))
                                .ifPresent(found::add));
        Desk own = workplace.desk(mistakes);
        if (!mistakes.isEmpty()) {
            return workplace.refuse(mistakes);
        }
        if (found.size() != 1) {
            throw usage("`" + Workplace.name(project) + "` holds several projects; name one");
        }
        PaperChoice choice =
                asked.map(p -> PaperChoice.asked(p, own))
                        .orElseGet(() -> PaperChoice.of(own, found.get(0).heading()));
        write(found.get(0), sheets(found.get(0), choice));
        return Secondbolt.DONE;
    }

    private Paper paper(String asked) {
        return Paper.named(asked)
                .orElseThrow(
                        () ->
                                usage(
                                        "no paper `"
                                                + asked
                                                + "`; there are "
                                                + String.join(", ", Paper.names())));
    }

    private List<PrintedSheet> sheets(Workings workings, PaperChoice choice) {
        List<Sheet> there = workings.sheets();
        if (all != names.isEmpty() || there.isEmpty()) {
            throw usage("name the sheets, or say --all; " + there(there));
        }
        List<Sheet> asked = all ? there : names.stream().map(name -> named(name, there)).toList();
        return asked.stream()
                .map(
                        sheet ->
                                PrintedSheet.Asked.of(
                                        workings.heading(), workings.stops(), sheet, choice))
                .map(PrintedSheet::of)
                .toList();
    }

    /** A shell may put accents together in another way than the name does. */
    private Sheet named(String name, List<Sheet> sheets) {
        return sheets.stream()
                .filter(s -> SheetName.folded(s.name()).equals(SheetName.folded(name)))
                .findFirst()
                .orElseThrow(() -> usage("no sheet `" + name + "`; " + there(sheets)));
    }

    private static String there(List<Sheet> sheets) {
        return sheets.isEmpty()
                ? "the project has none"
                : "there are " + sheets.stream().map(Sheet::name).collect(Collectors.joining(", "));
    }

    private ParameterException usage(String words) {
        return new ParameterException(spec.commandLine(), words);
    }

    /** Nothing is written unless all may be. */
    private void write(Workings workings, List<PrintedSheet> sheets) {
        Targets targets = new Targets(workplace.folder());
        Map<Path, PrintedSheet> asked = new LinkedHashMap<>();
        for (PrintedSheet sheet : sheets) {
            asked.put(path(sheet, sheets.size() == 1 && !all), sheet);
        }
        Map<Path, Path> places = new LinkedHashMap<>();
        asked.keySet()
                .forEach(
                        path ->
                                places.put(
                                        path,
                                        targets.target(
                                                path,
                                                MadeMark::isOnSheet,
                                                "name another place with --out")));
        asked.forEach((path, sheet) -> write(path, places.get(path), sheet, workings));
    }

    private Path path(PrintedSheet sheet, boolean isOne) {
        Path file = Path.of(sheet.file());
        return out == null ? file : isOne ? out : out.resolve(file);
    }

    private void write(Path asked, Path target, PrintedSheet sheet, Workings workings) {
        try {
            AtomicFile.write(target, sheet.pdf(workings.heading()));
        } catch (IOException e) {
            throw new UncheckedIOException(Workplace.name(asked) + " cannot be written", e);
        }
        if (!quiet) {
            workplace
                    .out()
                    .println(
                            Workplace.name(asked)
                                    + ": "
                                    + Plural.of(sheet.pages().size(), "page")
                                    + ", code "
                                    + sheet.code());
        }
    }
}
