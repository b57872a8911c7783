package secondbolt.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import secondbolt.cloth.yields.ClothCalculation;
import secondbolt.cutting.line.CuttingCalculation;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.fit.FitTopic;
import secondbolt.fit.result.FitCalculation;
import secondbolt.fit.seam.EdgeStretch;
import secondbolt.lay.design.LayCalculation;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.kept.LayDesk;
import secondbolt.measure.Tape;
import secondbolt.project.WrittenProject;
import secondbolt.worksheet.Finding;

/** Project files of a few lines, read and laid. */
final class LayText {
    private static final LayDesk DESK = LayDesk.inMemory();

    private LayText() {}

    private static Optional<WrittenProject> read(String text, Tape units, Mistakes mistakes) {
        return WrittenProject.read(
                SourceFile.of("test.yaml", "title: Test\nunits: " + units.symbol() + "\n" + text),
                mistakes);
    }

    static WrittenProject project(String text, Tape units) {
        Mistakes mistakes = new Mistakes();
        return read(text, units, mistakes)
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
    }

    /** What is wrong with a file, as line:column and what was found. */
    static List<String> mistakes(String text) {
        Mistakes mistakes = new Mistakes();
        read(text, Tape.CENTIMETRE, mistakes);
        return mistakes.inOrder().stream()
                .map(m -> m.place().line() + ":" + m.place().column() + " " + m.found())
                .toList();
    }

    static LayResult result(String text) {
        return result(text, DESK, Tape.CENTIMETRE);
    }

    static LayResult inInches(String text) {
        return result(text, DESK, Tape.INCH);
    }

    static LayResult result(String text, LayDesk desk, Tape units) {
        WrittenProject project = project(text, units);
        CuttingResult cutting =
                CuttingCalculation.work(
                        FitCalculation.work(
                                project.pattern().orElseThrow(),
                                project.alterations(),
                                EdgeStretch.NONE,
                                FitTopic.cut(
                                        project.lay().soFar(), project.pattern().orElseThrow()),
                                units),
                        project.hems(),
                        units);
        return LayCalculation.work(
                project.cloths().map(ClothCalculation::work).orElse(List.of()),
                cutting,
                project.lay(),
                units,
                desk);
    }

    /** The one thing of its kind that a maker is told of a lay. */
    static Finding told(LayResult result, String code) {
        List<Finding> told =
                LayFindings.of(result, Tape.CENTIMETRE).stream()
                        .filter(finding -> finding.code().equals(code))
                        .toList();
        assertEquals(1, told.size(), () -> code + " in " + LayFindings.of(result, Tape.CENTIMETRE));
        return told.get(0);
    }
}
