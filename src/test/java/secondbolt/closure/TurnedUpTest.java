package secondbolt.closure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.project.WrittenProject;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Worksheet;

/**
 * Buttons above a hem. That no hole goes through the fold of the hem is common practice, no source.
 * Flat buttons of 15 by 3 mm have holes of 18 mm (Extension Bulletin 576, 1965), upright ones from
 * 3 mm above the centre; the buttonhole foot needs 5 mm more. So the centre stands 15 + 5 mm above
 * the upper edge of the hem or higher, that of a level hole, worked 5 mm wide, 2.5 + 5 mm.
 */
class TurnedUpTest {
    private static final String HEM =
            "hems: {shirt hem: {on: [front.bottom], depth: 3, turned: %s}}";

    private static Worksheet closure(String closure, String hem) {
        Mistakes mistakes = new Mistakes();
        return WrittenProject.read(
                        SourceFile.of(
                                "test.yaml",
                                """
                                title: Shirt
                                units: cm
                                pattern:
                                  rights: mine
                                  pieces: {front: {cut: pair, rectangle: [30, 60]}}
                                closures:
                                  band: {%s, extension: 2, laps: left over right,
                                    button: {across: 15 mm, thick: 3 mm}}
                                %s
                                """
                                        .formatted(closure, hem)),
                        mistakes)
                .map(project -> project.workings("shirt"))
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()))
                .worksheets()
                .stream()
                .filter(w -> w.name().equals("closures"))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> warnings(Worksheet sheet) {
        return sheet.findings().stream()
                .filter(f -> f.level() == Finding.Level.WARNING)
                .map(f -> f.text() + " " + f.remedy())
                .toList();
    }

    private static double lastMm(Worksheet sheet) {
        List<?> marks = (List<?>) ((Map<?, ?>) sheet.figures().asMap().get("band")).get("marks");
        return (double) ((Map<?, ?>) marks.get(marks.size() - 1)).get("from_top_mm");
    }

    private static String placed(String on, String last, String holes) {
        return on + ", buttons: 5, first: 2, last: " + last + ", holes: " + holes;
    }

    @Test
    void warnsOfAHoleFixedInTheHem() {
        assertEquals(
                List.of(
                        "No hole can be stitched at number 5: turned-up shirt hem. With the last 30"
                                + " mm higher (`last` larger by as much) too. Or work what cannot be"
                                + " stitched by hand, as the sheet marks it."),
                warnings(closure(placed("on: front.left", "2", "upright"), HEM.formatted("once"))));
    }

    @Test
    void leavesTheFootRoomAboveTheHem() {
        for (String turned : List.of("once", "twice", "faced")) {
            String hem = HEM.formatted(turned);
            assertEquals(
                    List.of(), warnings(closure(placed("on: front.left", "5", "upright"), hem)));
            assertEquals(
                    1, warnings(closure(placed("on: front.left", "4.9", "upright"), hem)).size());
            assertEquals(
                    List.of(), warnings(closure(placed("on: front.right", "3.75", "level"), hem)));
            assertEquals(
                    1, warnings(closure(placed("on: front.right", "3.7", "level"), hem)).size());
        }
    }

    @Test
    void keepsALastOneThatIsFreeOutOfTheHem() {
        Worksheet sheet =
                closure(
                        placed("on: front.left", "{between: [1, 8]}", "upright"),
                        HEM.formatted("twice"));
        assertEquals(List.of(), warnings(sheet));
        assertEquals(550, lastMm(sheet), 0.01);
    }

    /** Derived: 30 + 3 + 5 mm from the top. */
    @Test
    void keepsTheFirstOutOfAHemAtTheTop() {
        String hem = "hems: {top hem: {on: [front.top], depth: 3, turned: twice}}";
        List<String> told = warnings(closure(placed("on: front.left", "5", "upright"), hem));
        assertEquals(1, told.size(), told.toString());
        assertTrue(told.get(0).contains("With the first 18 mm lower"), told.toString());
        assertEquals(
                List.of(),
                warnings(
                        closure(
                                "on: front.left, buttons: 5, first: 3.8, last: 5, holes: upright",
                                hem)));
    }

    @Test
    void knowsNoHemAtTheEndOfATapeOrOfAnotherEdge() {
        assertEquals(
                List.of(),
                warnings(closure(placed("length: 60", "2.5", "upright"), HEM.formatted("once"))));
        assertEquals(
                List.of(),
                warnings(
                        closure(
                                placed("on: front.left", "2.5", "upright"),
                                "hems: {side hem: {on: [front.right], depth: 3, turned: once}}")));
    }
}
