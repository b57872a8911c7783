package secondbolt.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.closure.placket.DrawnLaps;
import secondbolt.cutting.CuttingWorksheet;
import secondbolt.cutting.line.CuttingCalculation;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.draw.paper.Paper;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.fit.FitWorksheet;
import secondbolt.fit.result.FitCalculation;
import secondbolt.fit.result.FitResult;
import secondbolt.measure.Tape;
import secondbolt.notebook.PrintedSheet;
import secondbolt.notebook.paper.Desk;
import secondbolt.notebook.paper.PaperChoice;
import secondbolt.project.ProjectReader;
import secondbolt.project.WrittenProject;
import secondbolt.worksheet.Worksheet;

/**
 * How long a large pattern takes, warm, and how many times as long as what the JDK, JTS and PDFBox
 * take for the bare work: the fit with all its seams, the cutting lines, and all pieces full size
 * as PDF.
 */
public final class FitBenchmark {
    private static final int ROUNDS_BEFORE = 300;
    private static final int ROUNDS = 201;
    private static final int SHEET_ROUNDS_BEFORE = 20;
    private static final int SHEET_ROUNDS = 25;

    private static final Path FOLDER = Path.of("target/bench/fit");

    private final WrittenProject project;
    private final Tape tape;
    private final FitResult fit;
    private final CuttingResult cutting;
    private final GeometryFloor geometry;

    private FitBenchmark(WrittenProject project) {
        this.project = project;
        this.tape = project.heading().units();
        this.fit = fit();
        this.cutting = cutting();
        this.geometry = new GeometryFloor(fit.pattern().pieces(), fit.pieces());
    }

    /** Runs the three races and tells their medians. */
    public static void main(String[] args) throws Exception {
        Folders.removed(FOLDER);
        FitBenchmark benchmark = new FitBenchmark(read());
        benchmark.check();
        benchmark.print("fit and seams", benchmark.fits());
        benchmark.print("cutting lines", benchmark.cuttingLines());
        benchmark.print("all pieces full size on A4", benchmark.sheets());
    }

    private static WrittenProject read() throws IOException {
        Path file = FOLDER.resolve(ProjectReader.FILE);
        Files.createDirectories(FOLDER);
        Files.writeString(file, PanelledCoat.yaml());
        Mistakes mistakes = new Mistakes();
        Optional<WrittenProject> project =
                WrittenProject.read(
                        SourceFile.of(ProjectReader.FILE, Files.readString(file)), mistakes);
        mistakes.inOrder().forEach(System.out::println);
        return project.orElseThrow();
    }

    private FitResult fit() {
        return FitCalculation.work(project.pattern().orElseThrow(), project.alterations(), tape);
    }

    private CuttingResult cutting() {
        return CuttingCalculation.work(fit, project.hems(), tape);
    }

    /** A pattern that does not fit together would be another task. */
    private void check() {
        if (cutting.pieces().size() != PanelledCoat.PIECES) {
            throw new IllegalStateException(cutting.pieces().size() + " pieces");
        }
        List<Worksheet> worksheets =
                List.of(
                        FitWorksheet.of(fit, project.wearer(), DrawnLaps.NONE, tape).worksheet(),
                        new CuttingWorksheet(cutting, tape).worksheet());
        worksheets.stream().flatMap(w -> w.findings().stream()).forEach(System.out::println);
        System.out.println(
                cutting.pieces().size()
                        + " pieces, "
                        + fit.seams().size()
                        + " seams, "
                        + fit.alterations().size()
                        + " alterations");
    }

    private void print(String title, Race race) {
        System.out.println(title);
        race.told().forEach(System.out::println);
    }

    private Race fits() throws Exception {
        Race race =
                new Race(() -> {})
                        .with("fit", this::fit)
                        .with("the JDK flattens each edge", geometry::lengthsMm);
        race.run(ROUNDS_BEFORE, ROUNDS);
        return race;
    }

    private Race cuttingLines() throws Exception {
        Race race =
                new Race(() -> {})
                        .with("cutting lines", this::cutting)
                        .with("JTS buffers each piece", geometry::cornersOfCuttingLines);
        race.run(ROUNDS_BEFORE, ROUNDS);
        return race;
    }

    private Race sheets() throws Exception {
        List<List<String>> recorded = recorded();
        Race race =
                new Race(() -> {})
                        .with("from cutting lines to PDF", () -> pdfs(printed()))
                        .with(
                                "PDFBox draws the same",
                                () -> {
                                    for (List<String> sheet : recorded) {
                                        Floor.sheet(sheet);
                                    }
                                })
                        .with("of the first, up to laid out pages", this::printed);
        race.run(SHEET_ROUNDS_BEFORE, SHEET_ROUNDS);
        return race;
    }

    private List<PrintedSheet> printed() {
        PaperChoice paper = PaperChoice.asked(Paper.A4, Desk.UNKNOWN);
        return new CuttingWorksheet(cutting, tape)
                .worksheet().sheets().stream()
                        .map(s -> PrintedSheet.Asked.of(project.heading(), List.of(), s, paper))
                        .map(PrintedSheet::of)
                        .toList();
    }

    private List<byte[]> pdfs(List<PrintedSheet> sheets) {
        return sheets.stream().map(sheet -> sheet.pdf(project.heading())).toList();
    }

    private List<List<String>> recorded() throws IOException {
        List<PrintedSheet> sheets = printed();
        List<byte[]> pdfs = pdfs(sheets);
        List<List<String>> recorded = new ArrayList<>();
        for (int i = 0; i < pdfs.size(); i++) {
            Path pdf = FOLDER.resolve(sheets.get(i).file());
            Files.write(pdf, pdfs.get(i));
            recorded.add(Recording.sheet(pdf));
        }
        System.out.println(
                pdfs.size()
                        + " sheets, "
                        + sheets.stream().mapToInt(sheet -> sheet.pages().size()).sum()
                        + " pages, "
                        + pdfs.stream().mapToInt(pdf -> pdf.length).sum()
                        + " bytes");
        return recorded;
    }
}
