package secondbolt.closure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.garment.PieceEdge;
import secondbolt.project.WrittenProject;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Subject;

/**
 * A back in two halves of 24 cm each, 48 cm across. With an extension of 2 cm it must be drawn 26
 * cm wide: drawn 24 wide, to its centre line, nothing but the allowance of 1.5 lies past the line
 * of the buttons, and that is turned in.
 */
class ExtensionDrawnTest {
    private static List<Finding> found(String lies, String fasteners) {
        Mistakes mistakes = new Mistakes();
        return WrittenProject.read(
                        SourceFile.of(
                                "test.yaml",
                                """
                                title: Kleid
                                units: cm
                                pattern:
                                  rights: mine
                                  seam allowance: {of: 1.5, included: no}
                                  pieces: {Rückenteil: {cut: pair, outline: [{start: [0, 0]},
                                    {edge: oben, to: [24, 0]}, {edge: Seite, to: [24, 37]},
                                    {edge: unten, to: [0, 37]}, {edge: Rückenmitte, to: start}]}}
                                closures:
                                  Rücken: {%s, %s, laps: right over left, worn: back}
                                """
                                        .formatted(lies, fasteners)),
                        mistakes)
                .map(project -> project.workings("dress"))
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()))
                .worksheets()
                .stream()
                .filter(w -> w.name().equals("closures"))
                .flatMap(w -> w.findings().stream())
                .filter(f -> f.code().startsWith("extension-not-"))
                .toList();
    }

    private static final String ON = "on: Rückenteil.Rückenmitte";
    private static final String BUTTONS =
            "extension: 2, buttons: 6, first: 1.5, last: 3, holes: upright, button: {across: 15 mm,"
                    + " thick: 3 mm}";

    @Test
    void asksWhetherThePieceIsDrawnToItsFinishedEdge() {
        Finding asked = found(ON, BUTTONS).get(0);
        assertEquals("extension-not-told-drawn", asked.code());
        assertTrue(asked.text().contains("finished edge, 20 mm"), asked.text());
        assertTrue(
                asked.remedy()
                        .startsWith(
                                "If it is drawn to its finished edge, write `drawn to: finished"
                                        + " edge`"),
                asked.remedy());
    }

    /** No sheet of the piece may be cut: the finding is about its edge. */
    @Test
    void stopsAPieceThatIsDrawnToItsCentreLineOnly() {
        List<Finding> all = found(ON + ", drawn to: centre line", BUTTONS);
        assertEquals(1, all.size());
        assertEquals(Finding.Level.STOP, all.get(0).level());
        assertTrue(all.get(0).text().contains("no cloth for the extension of 20 mm"));
        assertTrue(all.get(0).remedy().contains("Draw the edge 20 mm farther out"));
        assertTrue(
                all.get(0)
                        .about()
                        .touches(new Subject.Edge(new PieceEdge("Rückenteil", "Rückenmitte"))));
        assertTrue(all.get(0).about().touches(new Subject.Piece("Rückenteil")));
    }

    @Test
    void isSilentWhereTheExtensionIsOnThePieceOrOnABand() {
        for (String to : List.of("finished edge", "band")) {
            assertEquals(List.of(), found(ON + ", drawn to: " + to, BUTTONS));
        }
    }

    /** By tape it lies on no piece; without an extension there is nothing to carry. */
    @Test
    void asksNothingByTapeOrWithoutAnExtension() {
        assertEquals(List.of(), found("length: 37", BUTTONS));
        assertEquals(List.of(), found(ON, "extension: none, snaps: 3, wide: 1, first: 2, last: 2"));
    }

    /** The snap of a bag lies below its opening, on no centre line: it is asked the same. */
    @Test
    void asksOfASnapAsWell() {
        assertTrue(
                found(ON, "extension: 2, snaps: 1, wide: 14 mm, first: 19")
                        .get(0)
                        .text()
                        .contains("past the line of the snaps"));
    }
}
