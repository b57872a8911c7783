package secondbolt.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.closure.placket.DrawnLaps;
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
import secondbolt.wearer.Wearer;
import secondbolt.worksheet.Open;

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

        /** What the alterations leave open; the measures of the pieces are another matter. */
        List<Open> openOfAlterations() {
            return gaps.open().stream().filter(o -> !o.what().contains("the edges")).toList();
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
        return new Figures(size, new MeaningGaps(fit, MadeMeasures.of(fit), size));
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
        assertEquals(List.of(), done.openOfAlterations());
        assertEquals(List.of(), done.gaps().assumed());
    }

    @Test
    void whatIsNotToldIsAskedFor() {
        Figures unknown = figures("Seitennaht", "", BOTH);
        assertEquals(Length.ofMillimetres(1100), unknown.finishedHip());
        assertEquals(
                List.of("what Seitennaht serves", "what the line forearm serves"),
                unknown.openOfAlterations().stream().map(o -> o.what()).toList());
        assertTrue(unknown.openOfAlterations().get(0).findOut().contains("{Seitennaht: side}"));
        // On a flared skirt a line below the hip would tell more ease there than there is.
        String line = unknown.openOfAlterations().get(1).findOut();
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

    /** Two legs of 25 cm at the top each way, 98 long: 4 · 25 = 100 round, 98 from waist to hem. */
    private static FitWorksheet trousers(String meaning) {
        String text =
                """
                title: Pantalón
                units: cm
                wearer: {age: adult, measurements: {waist: 84, hip: 104}}
                pattern:
                  pieces:
                    delantero: {cut: pair, outline: [{start: [0, 0]}, {edge: cintura, to: [25, 0]},
                      {edge: costado, to: [25, 98]}, {edge: bajo, to: [0, 98]},
                      {edge: entrepierna, to: [0, 28]}, {edge: tiro, to: start}]}
                    trasero: {cut: pair, outline: [{start: [0, 0]}, {edge: cintura, to: [25, 0]},
                      {edge: costado, to: [25, 98]}, {edge: bajo, to: [0, 98]},
                      {edge: entrepierna, to: [0, 28]}, {edge: tiro, to: start}]}
                    cordón: {cut: 1, rectangle: [4, 150]}
                  seams: [[delantero.costado, trasero.costado],
                    [delantero.entrepierna, trasero.entrepierna]]
                  %s
                """
                        .formatted(meaning);
        FitResult fit = WrittenPattern.of(text).sound();
        Optional<Wearer> wearer =
                WrittenProject.read(SourceFile.of("test.yaml", text), new Mistakes())
                        .orElseThrow()
                        .wearer();
        return FitWorksheet.of(fit, wearer, DrawnLaps.NONE, Tape.CENTIMETRE);
    }

    private static List<Open> edgesOpen(FitWorksheet fit) {
        return fit.worksheet().open().stream()
                .filter(o -> o.what().startsWith("what the edges"))
                .toList();
    }

    @Test
    void saysWhichMeaningsBringTheMeasuresThatNamesOfAnotherLanguageLeaveOut() {
        List<Open> open = edgesOpen(trousers(""));
        assertEquals(1, open.size());
        assertEquals(
                "what the edges bajo, cintura, costado, entrepierna, tiro serve",
                open.get(0).what());
        assertTrue(open.get(0).blocks().contains("how long and how far round it will be"));
        String findOut = open.get(0).findOut();
        assertTrue(findOut.contains("`meaning: {bajo: …}`"), findOut);
        assertTrue(findOut.contains("How long it is: shoulder"), findOut);
        assertTrue(findOut.contains("How far round it goes: waist"), findOut);
    }

    /** What the hint names brings both, and the hint is gone. */
    @Test
    void asksNoMoreOnceTheMeaningsAreWritten() {
        FitWorksheet fit =
                trousers(
                        "meaning: {cintura: waist, bajo: hem, costado: outseam, entrepierna:"
                                + " inseam, tiro: crotch}");
        assertEquals(List.of(), edgesOpen(fit));
        List<String> measures =
                fit.made().all().stream()
                        .map(m -> Tape.CENTIMETRE.print(m.after()))
                        .distinct()
                        .toList();
        assertTrue(measures.contains("98 cm") && measures.contains("100 cm"), measures::toString);
    }
}
