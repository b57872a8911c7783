package secondbolt.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.fit.made.MadeMeasures;
import secondbolt.fit.result.FitCalculation;
import secondbolt.fit.result.FitResult;
import secondbolt.fit.size.SizeResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.project.WrittenProject;
import secondbolt.wearer.BodyMeasure;

/**
 * Finished measures and suggestions follow what an edge serves, whatever its name. Amounts derived
 * by hand from the chart in the test.
 */
class MeaningOfFiguresTest {
    private record Figures(SizeResult size, MeaningGaps gaps) {
        List<String> suggested() {
            return size.suggestions().stream()
                    .map(SizeResult.Suggestion::yaml)
                    .flatMap(Optional::stream)
                    .toList();
        }

        Length finishedHip() {
            return size.measurements().stream()
                    .filter(m -> m.name() == BodyMeasure.HIP)
                    .findFirst()
                    .flatMap(SizeResult.Measurement::finished)
                    .orElseThrow();
        }
    }

    private static Figures figures(String side, String more, String alterations) {
        String text =
                """
                title: Hemd
                units: cm
                wearer: {age: adult, measurements: {bust: 94, waist: 76, hip: 106, arm length: 62}}
                pattern:
                  sizes: {size: [14], bust: [94], waist: [76], hip: [102], arm length: [60]}
                  size: 14
                  finished: {hip: 110}
                  pieces:
                    Vorderteil: {cut: pair, lines: {Hüfte: 60}, marks: [{what: waist, at: [5, 40]}],
                      outline: [{start: [0, 0]}, {edge: top, to: [28, 0]}, {edge: %s, to: [28, 70]},
                        {edge: Saum, to: [0, 70]}, {edge: Mitte, to: start}]}
                    Ärmel: {cut: pair, lines: {forearm: 30}, rectangle: [40, 50]}
                %s
                alterations: [%s]
                """
                        .formatted(side, more, alterations);
        Mistakes mistakes = new Mistakes();
        WrittenProject project =
                WrittenProject.read(SourceFile.of("test.yaml", text), mistakes)
                        .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
        FitResult fit =
                FitCalculation.work(
                        project.pattern().orElseThrow(), project.alterations(), Tape.CENTIMETRE);
        SizeResult size = FitSize.of(fit, MadeMeasures.of(fit), project.wearer(), Tape.CENTIMETRE);
        return new Figures(size, MeaningGaps.of(fit, size));
    }

    private static final String MEANING = "  meaning: {Seitennaht: side, forearm: sleeve}";
    private static final String BOTH = "{widen: Seitennaht, by: 4}, {lengthen: forearm, by: 2}";

    @Test
    void whatIsToldIsSuggestedByItsName() {
        assertEquals(
                List.of("- {lengthen: forearm, by: 2 cm}", "- {widen: Seitennaht, by: 4 cm}"),
                figures("Seitennaht", MEANING, "").suggested());
    }

    @Test
    void whatIsDoneIsCountedAndNotAdvisedAgain() {
        Figures done = figures("Seitennaht", MEANING, BOTH);
        assertEquals(List.of(), done.suggested());
        assertEquals(Length.ofMillimetres(1140), done.finishedHip());
        assertEquals(List.of(), done.gaps().open());
        assertEquals(List.of(), done.gaps().assumed());
    }

    @Test
    void whatIsNotToldIsAskedFor() {
        Figures unknown = figures("Seitennaht", "", BOTH);
        assertEquals(Length.ofMillimetres(1100), unknown.finishedHip());
        assertEquals(
                List.of("what Seitennaht serves", "what the line forearm serves"),
                unknown.gaps().open().stream().map(o -> o.what()).toList());
        assertTrue(unknown.gaps().open().get(0).findOut().contains("{Seitennaht: side}"));
        // On a flared skirt a line below the hip would tell more ease there than there is.
        String line = unknown.gaps().open().get(1).findOut();
        assertTrue(line.contains("Write hip only if it lies where the hip is"), line);
    }

    @Test
    void aNameInEnglishIsTakenAndToldOnce() {
        Figures named =
                figures(
                        "left side",
                        "  meaning: {forearm: sleeve}",
                        "{widen: left side, by: 2}, {widen: left side, by: 2}");
        assertEquals(Length.ofMillimetres(1140), named.finishedHip());
        assertEquals(
                List.of("`left side` (side)"),
                named.gaps().assumed().stream().map(a -> a.value()).toList());
    }

    /** The waist is marked; the hip is a line the maker names. */
    @Test
    void aLineToldTheHipGivesTheLevel() {
        String meaning = "  meaning: {Seitennaht: side, forearm: sleeve, Hüfte: hip}";
        assertEquals(
                Length.ofMillimetres(1120),
                figures("Seitennaht", meaning, "{widen: Seitennaht, by: 4, from: 50, to: 70}")
                        .finishedHip());
    }
}
