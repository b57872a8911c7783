package secondbolt.hem.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.project.Workings;
import secondbolt.project.WrittenProject;
import secondbolt.worksheet.Worksheet;

/**
 * A placket on outlines that include the allowance: it runs from the sewn neckline to the fold of
 * the hem. Derived from what each hem turns up.
 */
class HemAllowancesTest {
    /**
     * 60 cm less 1.5 cm at the top, and at the foot what the hem turns up, the raw edge of 6 mm
     * too.
     */
    @ParameterizedTest
    @CsvSource({"once, 4, 545", "twice, 4, 539", "narrow, 0.6, 573", "faced, 4, 570"})
    void aPlacketEndsAtTheFoldOfTheHem(String turned, String depth, double lengthMm) {
        String text =
                """
                title: Shirt
                units: cm
                pattern:
                  seam allowance: {of: 1.5, included: true}
                  pieces: {front: {cut: pair, rectangle: [30, 60]}}
                closures:
                  band:
                    on: front.left
                    extension: 2
                    laps: left over right
                    buttons: 5
                    button: {across: 15 mm, thick: 3 mm}
                    first: 2
                    last: {between: [1, 12]}
                    holes: upright
                hems: {hem: {on: [front.bottom], depth: %s, turned: %s}}
                """
                        .formatted(depth, turned);
        Workings workings = workings(text);
        Worksheet closures =
                workings.worksheets().stream()
                        .filter(w -> w.name().equals("closures"))
                        .findFirst()
                        .orElseThrow();
        Map<?, ?> band = (Map<?, ?>) closures.figures().asMap().get("band");
        assertEquals(lengthMm, (double) band.get("edge_length_mm"), 0.01);
    }

    /** The strip's long edges are turned: nothing else could be sewn to them. */
    @Test
    void anEdgeThatIsTurnedIsAHemWhateverItsName() {
        String pattern =
                """
                title: Schürze
                units: cm
                pattern:
                  pieces: {Bahn: {cut: 1, lines: {Mitte: 30}, rectangle: [30, 60]}}
                alterations: [{lengthen: Mitte, by: 3}]
                """;
        String hems = "hems: {Kanten: {on: [Bahn.left, Bahn.right], depth: 1, turned: narrow}}\n";
        assertEquals(1, looseEdges(pattern));
        assertEquals(0, looseEdges(pattern + hems));
    }

    private static long looseEdges(String text) {
        return workings(text).worksheets().stream()
                .flatMap(sheet -> sheet.findings().stream())
                .filter(finding -> finding.text().contains("edges that no declared seam checks"))
                .count();
    }

    private static Workings workings(String text) {
        Mistakes mistakes = new Mistakes();
        return WrittenProject.read(SourceFile.of("test.yaml", text), mistakes)
                .map(project -> project.workings("test"))
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
    }
}
