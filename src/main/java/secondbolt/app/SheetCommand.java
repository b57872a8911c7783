package secondbolt.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

/** Makes one sheet. */
@Command(
        name = "sheet",
        mixinStandardHelpOptions = true,
        description = {"Makes one sheet of a project as a PDF, true to scale.", ""})
final class SheetCommand implements Callable<Integer> {
    private final Workplace workplace;

    @Parameters(index = "0", paramLabel = "PROJECT", description = "a project's folder or file")
    private Path project;

    @Parameters(index = "1", paramLabel = "SHEET", description = "the sheet's name")
    private String name;

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
            description = "where it goes (default: the sheet's name with .pdf)")
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
        write(found.get(0), sheet(found.get(0), choice));
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

    private PrintedSheet sheet(Workings workings, PaperChoice choice) {
        List<Sheet> sheets = workings.sheets();
        return sheets.stream()
                .filter(this::isAsked)
                .findFirst()
                .map(
                        sheet ->
                                PrintedSheet.Asked.of(
                                        workings.heading(), workings.stops(), sheet, choice))
                .map(PrintedSheet::of)
                .orElseThrow(() -> usage("no sheet `" + name + "`; " + there(sheets)));
    }

    /** A shell may put accents together in another way than the name does. */
    private boolean isAsked(Sheet sheet) {
        return SheetName.folded(sheet.name()).equals(SheetName.folded(name));
    }

    private static String there(List<Sheet> sheets) {
        return sheets.isEmpty()
                ? "the project has none"
                : "there are " + sheets.stream().map(Sheet::name).collect(Collectors.joining(", "));
    }

    private ParameterException usage(String words) {
        return new ParameterException(spec.commandLine(), words);
    }

    private void write(Workings workings, PrintedSheet sheet) {
        Path asked = out == null ? Path.of(sheet.file()) : out;
        Path target =
                new Targets(workplace.folder())
                        .target(
                                asked,
                                MadeMark::isOnSheet,
                                "name the file of the sheet with --out");
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
