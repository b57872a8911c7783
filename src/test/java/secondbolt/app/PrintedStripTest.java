package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.yaml.snakeyaml.Yaml;
import secondbolt.shape.Point;
import secondbolt.tools.GluedSheet;
import secondbolt.tools.Raster;

/**
 * Lays the printed strip beside {@code workings.json}: glues the tiles by their join marks on the
 * pixels, and measures each hole from the finished top edge. The pictures are poppler's.
 */
// One at a time, since the pictures of a long strip fill the memory.
@ResourceLock("large pictures")
class PrintedStripTest {
    private static final int DPI = 300;

    /** For strips of many tiles, since what each join is read off by adds up. */
    private static final int FINE_DPI = 600;

    private static final int MANY_TILES_FROM_BUTTONS = 20;

    private static final double WITHIN_MM = 0.1;

    /** Beside a hole's line, but still on its bars and on the cross of the button. */
    private static final double BESIDE_MM = 1.3;

    private static final double REACH_MM = 1.2;

    @TempDir Path folder;

    @ParameterizedTest
    @CsvSource({
        "a4, 0.1 m, upright, 2",
        "a4, 0.65 m, upright, 7",
        "a4, 2.5 m, upright, 24",
        "a4, 0.1 m, level, 2",
        "a4, 2.5 m, level, 24",
        "letter, 0.65 m, upright, 7",
        "letter, 0.3 m, level, 4",
        "a3, 0.9 m, upright, 9",
        "legal, 0.7 m, level, 6",
        "tabloid, 0.9 m, upright, 9",
        "a4+letter, 0.65 m, level, 6",
        "'[18 cm, 24 cm]', 0.65 m, upright, 7"
    })
    void standsWithinATenthOfAMillimetre(String paper, String length, String holes, int buttons)
            throws IOException {
        Desktop desktop =
                new Desktop(folder)
                        .with(
                                "p/coat/project.yaml",
                                String.join(
                                        "\n",
                                        "title: Coat",
                                        "units: cm",
                                        "paper: " + paper,
                                        "closures:",
                                        "  front:",
                                        "    length: " + length,
                                        "    extension: 2.2",
                                        "    buttons: " + buttons,
                                        "    button: {across: 16 mm, thick: 3 mm}",
                                        "    first: 17 mm",
                                        "    last: 23 mm",
                                        "    holes: " + holes,
                                        "    laps: right over left",
                                        ""));
        assertEquals(Secondbolt.DONE, desktop.run("notebook", "p", "--quiet"), desktop.err());
        int dpi = buttons < MANY_TILES_FROM_BUTTONS ? DPI : FINE_DPI;
        Strip strip = new Strip(folder.resolve("site/coat/front.pdf"), dpi);
        List<Map<String, Object>> marks = marks(desktop);
        assertEquals(buttons, marks.size());
        for (Map<String, Object> mark : marks) {
            double fromTop = number(mark, "from_top_mm");
            if (holes.equals("upright")) {
                double x = strip.centreMm() - BESIDE_MM;
                strip.assertDown(x, number(mark, "start_mm"), WITHIN_MM);
                strip.assertDown(x, fromTop, WITHIN_MM);
                strip.assertDown(x, number(mark, "end_mm"), WITHIN_MM);
            } else {
                double x = strip.centreMm() - number(mark, "end_mm") / 2;
                strip.assertDown(x, fromTop, WITHIN_MM);
                strip.assertAcross(fromTop + BESIDE_MM, -number(mark, "start_mm"), WITHIN_MM);
                strip.assertAcross(fromTop + BESIDE_MM, -number(mark, "end_mm"), WITHIN_MM);
            }
            strip.assertBothStripsMeet(mark, holes.equals("upright"));
        }
    }

    @SuppressWarnings("unchecked") // the file is ours
    private static List<Map<String, Object>> marks(Desktop desktop) {
        Map<String, Object> workings = new Yaml().load(desktop.read("site/coat/workings.json"));
        Map<String, Object> closures = (Map<String, Object>) workings.get("closures");
        Map<String, Object> front = (Map<String, Object>) closures.get("front");
        assertEquals(22.0, number(front, "extension_mm"));
        return (List<Map<String, Object>>) front.get("marks");
    }

    private static double number(Map<String, Object> from, String key) {
        return ((Number) from.get(key)).doubleValue();
    }

    /** The strip, glued from its tiles; zero is the finished top edge. */
    private static final class Strip {
        private final GluedSheet sheet;
        private final double topMm;
        private final double edgeMm;
        private final double otherEdgeMm;

        Strip(Path pdf, int dpi) {
            sheet = GluedSheet.of(pdf, dpi);
            topMm = 34 + nearest(sheet.through(new Point(14, 34), 0, 1, 4));
            double middleMm = sheet.widthMm() / 2;
            List<Double> edges =
                    sheet.through(new Point(middleMm, topMm + 4), 1, 0, middleMm - 12).stream()
                            .filter(run -> run.widthMm() > 0.4)
                            .map(run -> middleMm + run.middleMm())
                            .toList();
            edgeMm = edges.get(0);
            otherEdgeMm = edges.get(1);
        }

        private static double nearest(List<Raster.Run> runs) {
            return runs.stream()
                    .map(Raster.Run::middleMm)
                    .min(Comparator.comparingDouble(Math::abs))
                    .orElseThrow(() -> new AssertionError("nothing is drawn near"));
        }

        /** The centre line of the strip with the holes, across on the page. */
        double centreMm() {
            return edgeMm - 22;
        }

        /**
         * Both strips laid on each other, edge on top edge: an upright hole begins 3 mm above the
         * button's centre, a level one 3 mm past it toward the edge. Sources: dressmakers'
         * association standards; Extension Bulletin 576, 1965.
         */
        void assertBothStripsMeet(Map<String, Object> mark, boolean isUpright) {
            double fromTop = number(mark, "from_top_mm");
            Point button = new Point(otherEdgeMm + 22 + BESIDE_MM, topMm + fromTop);
            double buttonDown = fromTop + nearest(sheet.through(button, 0, 1, REACH_MM));
            double start = number(mark, "start_mm");
            if (isUpright) {
                Point hole = new Point(centreMm() - BESIDE_MM, topMm + start);
                double holeDown = start + nearest(sheet.through(hole, 0, 1, REACH_MM));
                assertEquals(-3, holeDown - buttonDown, 2 * WITHIN_MM, "at " + fromTop);
            } else {
                Point centre = new Point(otherEdgeMm + 22, topMm + fromTop + BESIDE_MM);
                double buttonIn = 22 + nearest(sheet.through(centre, 1, 0, REACH_MM));
                Point hole = new Point(centreMm() - start, topMm + fromTop + BESIDE_MM);
                double holeIn = 22 + start - nearest(sheet.through(hole, 1, 0, REACH_MM));
                assertEquals(-3, holeIn - buttonIn, 2 * WITHIN_MM, "at " + fromTop);
            }
        }

        void assertDown(double xMm, double fromTopMm, double withinMm) {
            Point at = new Point(xMm, topMm + fromTopMm);
            double off = nearest(sheet.through(at, 0, 1, REACH_MM));
            assertEquals(0, off, withinMm, "from the top " + fromTopMm);
        }

        void assertAcross(double fromTopMm, double towardTheEdgeMm, double withinMm) {
            Point at = new Point(centreMm() + towardTheEdgeMm, topMm + fromTopMm);
            double off = nearest(sheet.through(at, 1, 0, REACH_MM));
            assertEquals(0, off, withinMm, "from the centre " + towardTheEdgeMm);
        }
    }
}
