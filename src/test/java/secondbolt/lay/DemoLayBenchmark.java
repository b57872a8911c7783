package secondbolt.lay;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import secondbolt.cloth.yields.ClothCalculation;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.cutting.line.CuttingCalculation;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.fit.result.FitCalculation;
import secondbolt.garment.Role;
import secondbolt.lay.kept.LayCache;
import secondbolt.lay.kept.LayDesk;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.piece.LayPieces;
import secondbolt.lay.search.SearchObserver;
import secondbolt.lay.stock.CuttingProgress;
import secondbolt.lay.stock.StockLay;
import secondbolt.lay.stock.StockTable;
import secondbolt.lay.stock.Trial;
import secondbolt.measure.Tape;
import secondbolt.project.WrittenProject;

/**
 * Tells when the first whole plan of a project's main cloth stands, and when the finished one does,
 * in a program that has just started. Run by hand: {@code DemoLayBenchmark PROJECT_FOLDER}.
 */
public final class DemoLayBenchmark {
    private DemoLayBenchmark() {}

    /**
     * Runs it.
     *
     * @param args the folder of one project
     */
    public static void main(String[] args) throws IOException {
        Path file = Path.of(args[0], "project.yaml");
        WrittenProject project =
                WrittenProject.read(
                                SourceFile.of("project.yaml", Files.readString(file)),
                                new Mistakes())
                        .orElseThrow();
        Tape tape = project.heading().units();
        List<ClothResult> cloths = ClothCalculation.work(project.cloths().orElseThrow());
        CuttingResult cutting =
                CuttingCalculation.work(
                        FitCalculation.work(
                                project.pattern().orElseThrow(), project.alterations(), tape),
                        project.hems(),
                        tape);
        LayPieces pieces = new LayPieces(cutting);
        List<LayPiece> wanted =
                pieces.of(
                        Role.MAIN,
                        name ->
                                project.lay().designs().values().stream()
                                        .findFirst()
                                        .map(d -> d.needs(name))
                                        .orElse(true));
        long began = System.nanoTime();
        long[] first = {0};
        SearchObserver watch =
                (share, bestMm) -> {
                    if (bestMm > 0 && first[0] == 0) {
                        first[0] = System.nanoTime();
                    }
                    return true;
                };
        LayDesk desk = new LayDesk(LayDesk.inMemory().store(), 2, watch);
        StockTable table =
                new StockTable(
                        CuttingProgress.of(
                                project.lay(), new LayPieces(cutting), List.of(), List.of()),
                        new LayCache(desk));
        StockLay lay =
                table.lay(
                        Role.MAIN,
                        cloths.stream()
                                .filter(c -> c.cloth().textile().roleOrMain() == Role.MAIN)
                                .toList(),
                        wanted,
                        Trial.asWritten(project.lay()),
                        project.lay().effortOrSteady());
        long ended = System.nanoTime();
        System.out.printf(
                Locale.ROOT,
                "%s: %d pieces, %s; first plan after %.2f s, finished after %.2f s%n",
                project.heading().title(),
                wanted.size(),
                lay.fits() ? "all laid" : "not all laid",
                (first[0] - began) / 1e9,
                (ended - began) / 1e9);
    }
}
