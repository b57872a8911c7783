package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.yaml.snakeyaml.Yaml;
import secondbolt.tools.Raster;
import secondbolt.tools.Tools;

/**
 * Lays the printed strip beside {@code workings.json}: glues the tiles by their join marks on the
 * pixels, and measures each hole from the finished top edge. The pictures are poppler's, at 600
 * dpi.
 */
class PrintedStripTest {
    private static final int DPI = 600;
    private static final double WITHIN_MM = 0.1;

    /** Half the overlap: the join line's distance from the live edge, which lies 10 mm inside. */
    private static final double JOIN_FROM_EDGE_MM = 15;

    /** Where the arm of a join mark's cross is met beside its ring. */
    private static final double JOIN_ARM_MM = 28 + 2.9;

    /** Beside a hole's line, but still on its bars and on the cross of the button. */
    private static final double BESIDE_MM = 1.3;

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
        Glued strip = new Glued(tiles(folder.resolve("site/coat/front.pdf")));
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
        }
    }

    /** The pages behind the lead sheets. */
    private static List<Raster> tiles(Path pdf) {
        String program = Tools.require("pdftotext").toString();
        String[] texts = Tools.run(pdf.getParent(), program, pdf.toString(), "-").split("\f", -1);
        int leads = (int) Stream.of(texts).filter(text -> text.contains("lead sheet")).count();
        List<Raster> pages = Raster.pages(pdf, DPI);
        return pages.subList(leads, pages.size());
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

    /** The tiles of the strip, glued by their marks; zero is the finished top edge. */
    private static final class Glued {
        private final List<Raster> tiles = new ArrayList<>();

        /** How far below the first page's top edge each page's top edge comes to lie. */
        private final List<Double> offsets = new ArrayList<>();

        private final double topMm;
        private final double edgeMm;

        Glued(List<Raster> pages) {
            tiles.addAll(pages);
            offsets.add(0.0);
            for (int i = 1; i < tiles.size(); i++) {
                double above =
                        join(tiles.get(i - 1), tiles.get(i - 1).heightMm() - JOIN_FROM_EDGE_MM);
                double below = join(tiles.get(i), JOIN_FROM_EDGE_MM);
                offsets.add(offsets.get(i - 1) + above - below);
            }
            topMm = nearest(tiles.get(0).down(14, 30, 60), 34).middleMm();
            edgeMm =
                    tiles.get(0).across(topMm + 4, 12, tiles.get(0).widthMm() - 10).stream()
                            .filter(run -> run.widthMm() > 0.4)
                            .findFirst()
                            .orElseThrow()
                            .middleMm();
        }

        private static double join(Raster tile, double aboutMm) {
            return nearest(tile.down(JOIN_ARM_MM, aboutMm - 1, aboutMm + 1), aboutMm).middleMm();
        }

        private static Raster.Run nearest(List<Raster.Run> runs, double mm) {
            return runs.stream()
                    .min(Comparator.comparingDouble(run -> Math.abs(run.middleMm() - mm)))
                    .orElseThrow(() -> new AssertionError("nothing drawn near " + mm));
        }

        /** The centre line of the strip with the holes, across on the page. */
        double centreMm() {
            return edgeMm - 22;
        }

        private int tileAt(double fromTopMm) {
            for (int i = tiles.size() - 1; i > 0; i--) {
                if (onPage(i, fromTopMm) > JOIN_FROM_EDGE_MM + 3) {
                    return i;
                }
            }
            return 0;
        }

        private double onPage(int tile, double fromTopMm) {
            return topMm + fromTopMm - offsets.get(tile);
        }

        void assertDown(double xMm, double fromTopMm, double withinMm) {
            int tile = tileAt(fromTopMm);
            double y = onPage(tile, fromTopMm);
            double found = nearest(tiles.get(tile).down(xMm, y - 1.2, y + 1.2), y).middleMm();
            assertEquals(y, found, withinMm, "from the top " + fromTopMm);
        }

        void assertAcross(double fromTopMm, double towardTheEdgeMm, double withinMm) {
            int tile = tileAt(fromTopMm);
            double y = onPage(tile, fromTopMm);
            double x = centreMm() + towardTheEdgeMm;
            double found = nearest(tiles.get(tile).across(y, x - 1.2, x + 1.2), x).middleMm();
            assertEquals(x, found, withinMm, "from the centre " + towardTheEdgeMm);
        }
    }
}
