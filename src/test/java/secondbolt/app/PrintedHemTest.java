package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.yaml.snakeyaml.Yaml;
import secondbolt.shape.Point;
import secondbolt.tools.GluedSheet;
import secondbolt.tools.Raster;

/**
 * Measures printed pressing cards and level strips on poppler's pixels at 300 dpi, tiles glued by
 * their join marks.
 */
class PrintedHemTest {
    private static final int DPI = 300;
    private static final double WITHIN_MM = 0.15;
    private static final double ARC_WITHIN_MM = 0.2;

    /** The drawing's frame begins 10 mm inside the page, and the card 1 mm inside the frame. */
    private static final double CARD_LEFT_MM = 11;

    private static final double WINDOW_MM = 8;

    @TempDir Path folder;

    private Map<String, Object> run(String paper, String units, String piece, String hem) {
        Desktop desktop =
                new Desktop(folder)
                        .with(
                                "p/skirt/project.yaml",
                                String.join(
                                        "\n",
                                        "title: Skirt",
                                        "units: " + units,
                                        "paper: " + paper,
                                        "pattern: {pieces: {skirt: " + piece + "}}",
                                        "hems: {edge: " + hem + "}",
                                        ""));
        assertEquals(Secondbolt.DONE, desktop.run("notebook", "p", "--quiet"), desktop.err());
        Map<String, Object> workings = new Yaml().load(desktop.read("site/skirt/workings.json"));
        return map(map(workings, "hems"), "edge");
    }

    @SuppressWarnings("unchecked") // the file is ours
    private static Map<String, Object> map(Map<String, Object> from, String key) {
        return (Map<String, Object>) from.get(key);
    }

    private GluedSheet sheet(String name) {
        return GluedSheet.of(folder.resolve("site/skirt/" + name + ".pdf"), DPI);
    }

    /**
     * All that is dark straight down a line of the sheet, window by window, so that each is read on
     * the tile that shows it.
     */
    private static List<Raster.Run> down(GluedSheet sheet, double xMm, double fromMm, double toMm) {
        List<Raster.Run> all = new ArrayList<>();
        for (double middle = fromMm + WINDOW_MM; middle < toMm; middle += 2 * WINDOW_MM) {
            double at = middle;
            sheet.through(new Point(xMm, at), 0, 1, WINDOW_MM + 1).stream()
                    .filter(run -> Math.abs(run.middleMm()) <= WINDOW_MM)
                    .map(run -> new Raster.Run(run.middleMm() + at, run.widthMm()))
                    .forEach(all::add);
        }
        all.sort(Comparator.comparingDouble(Raster.Run::middleMm));
        return all;
    }

    @ParameterizedTest
    @CsvSource({
        "a4, cm, twice, 2",
        "letter, in, twice, 1 1/2",
        "a4, cm, narrow, 0.5",
        "letter, in, narrow, 1/4",
        "a4, cm, once, 4",
        "a4, cm, blind, 7",
        "a3, cm, twice, 12"
    })
    void hasItsLinesWhereTheyArePressed(String paper, String units, String turned, String depth) {
        String metric = units.equals("cm") ? "[50, 60]" : "[20, 24]";
        Map<String, Object> hem =
                run(
                        paper,
                        units,
                        "{cut: 2, rectangle: " + metric + "}",
                        "{on: [skirt.bottom], depth: " + depth + ", turned: " + turned + "}");
        List<Double> depths = new ArrayList<>();
        ((List<?>) hem.get("pressing_depths_mm"))
                .forEach(d -> depths.add(((Number) d).doubleValue()));
        GluedSheet sheet = sheet("hem-guide-edge");
        // To the right of all words: fold lowest, then each line above it.
        List<Raster.Run> lines = down(sheet, CARD_LEFT_MM + 175, 10.5, 280);
        double foldMm = lines.get(lines.size() - 1).middleMm();
        assertTrue(lines.get(lines.size() - 1).widthMm() > 0.4, "the fold is a heavy line");
        for (int i = 0; i < depths.size(); i++) {
            double found = foldMm - lines.get(lines.size() - 2 - i).middleMm();
            assertEquals(depths.get(i), found, WITHIN_MM, "line " + i);
        }
        // Above the deepest line stands only the card's upper edge.
        assertEquals(depths.size() + 2, lines.size());
    }

    @ParameterizedTest
    @CsvSource({
        "'{cut: 4, ring: {inner: 11.94, outer: 77.94, turn: 90}}', hem, 1.2, 779.4, true",
        "'{cut: 1, ring: {inner: 20, outer: 75, turn: 180}}', hem, 4, 750, true",
        "'{cut: 1, ring: {inner: 5, outer: 15, turn: 180}}', hem, 2, 150, true",
        "'{cut: 1, ring: {inner: 20, outer: 75, turn: 180}}', waist, 2, 200, false"
    })
    void curvesAsTheHemDoes(
            String piece, String edge, String depth, double radiusMm, boolean bulges) {
        Map<String, Object> hem =
                run(
                        "a4",
                        "cm",
                        piece,
                        "{on: [skirt." + edge + "], depth: " + depth + ", turned: once}");
        double depthMm = ((Number) ((List<?>) hem.get("pressing_depths_mm")).get(0)).doubleValue();
        GluedSheet sheet = sheet("hem-guide-edge");
        List<Point> fold = new ArrayList<>();
        List<Point> line = new ArrayList<>();
        for (double x = CARD_LEFT_MM + 55; x < CARD_LEFT_MM + 125; x += 3) {
            List<Raster.Run> runs = down(sheet, x, 52, 250);
            fold.add(new Point(x, runs.get(runs.size() - 1).middleMm()));
            line.add(new Point(x, runs.get(runs.size() - 2).middleMm()));
        }
        assertLiesOn(fold, radiusMm, bulges);
        assertLiesOn(line, bulges ? radiusMm - depthMm : radiusMm + depthMm, bulges);
        int middle = fold.size() / 2;
        assertEquals(
                depthMm,
                fold.get(middle).yMm() - line.get(middle).yMm(),
                // Read straight down a little beside the middle, where the curve slants.
                WITHIN_MM + depthMm * 0.002);
    }

    /** A circle of this radius through the middle of the first and the last, and all near it. */
    private static void assertLiesOn(List<Point> points, double radiusMm, boolean bulges) {
        Point a = points.get(0);
        Point b = points.get(points.size() - 1);
        double half = a.distanceMm(b) / 2;
        double up = Math.sqrt(radiusMm * radiusMm - half * half) * (bulges ? -1 : 1);
        double x = (b.xMm() - a.xMm()) / (2 * half);
        double y = (b.yMm() - a.yMm()) / (2 * half);
        Point centre =
                new Point((a.xMm() + b.xMm()) / 2 - y * up, (a.yMm() + b.yMm()) / 2 + x * up);
        for (Point point : points) {
            assertEquals(radiusMm, centre.distanceMm(point), ARC_WITHIN_MM, point.toString());
        }
    }

    @ParameterizedTest
    @CsvSource({"a4, cm, 40, 5", "letter, in, 20 1/2, 2", "a4, cm, 3, 2", "a4, cm, 120, 1.5"})
    void standsOnTheFloor(String paper, String units, String fromFloor, String depth) {
        String metric = units.equals("cm") ? "[50, 60]" : "[20, 24]";
        Map<String, Object> hem =
                run(
                        paper,
                        units,
                        "{cut: 2, rectangle: " + metric + "}",
                        "{on: [skirt.bottom], depth: "
                                + depth
                                + ", turned: once, from floor: "
                                + fromFloor
                                + "}");
        GluedSheet sheet = sheet("hem-level-edge");
        // Past the ticks and before the words.
        List<Raster.Run> lines = down(sheet, CARD_LEFT_MM + 10, 10.5, sheet.heightMm() - 10);
        List<Raster.Run> heavy = lines.stream().filter(run -> run.widthMm() > 0.4).toList();
        double floorMm = heavy.get(heavy.size() - 1).middleMm();
        double foldMm = ((Number) hem.get("from_floor_mm")).doubleValue();
        assertEquals(foldMm, floorMm - heavy.get(1).middleMm(), WITHIN_MM + foldMm * 1e-4);
        assertTrue(heavy.get(1).widthMm() > 0.6, "the fold is the heaviest line");
        if (hem.get("trim_mm") != null) {
            double trimMm = ((Number) hem.get("trim_mm")).doubleValue();
            double seen =
                    trimDashes(sheet, floorMm - trimMm).stream()
                            .min(Comparator.comparingDouble(y -> Math.abs(y - floorMm + trimMm)))
                            .orElseThrow();
            assertEquals(trimMm, floorMm - seen, WITHIN_MM + trimMm * 1e-4);
        } else {
            assertTrue(foldMm < 40);
        }
    }

    /** A dashed line is met on one of two places half a dash apart. */
    private static List<Double> trimDashes(GluedSheet sheet, double nearMm) {
        List<Double> seen = new ArrayList<>();
        for (double x = CARD_LEFT_MM + 10; x < CARD_LEFT_MM + 15; x += 1) {
            down(sheet, x, nearMm - WINDOW_MM, nearMm + 1).forEach(run -> seen.add(run.middleMm()));
        }
        return seen;
    }

    /** The general curve is printed whole: from end to end as long as the fold in the workings. */
    @Test
    void printsACurveInFullLength() {
        Map<String, Object> hem =
                run(
                        "a4",
                        "cm",
                        "{cut: pair, outline: [{start: [0, 0]}, {edge: top, to: [30, 0]}, {edge:"
                                + " side, to: [30, 60]}, {edge: hem, to: [0, 66], through: [[18,"
                                + " 63.5], [9, 65.8]]}, {edge: front, to: start}]}",
                        "{on: [skirt.hem], depth: 1, turned: twice}");
        Map<?, ?> edge = (Map<?, ?>) ((List<?>) hem.get("edges")).get(0);
        assertTrue(!edge.containsKey("radius_mm"));
        GluedSheet sheet = sheet("hem-guide-edge");
        assertTrue(sheet.says("left end front, right end side"));
        double foldMm = ((Number) edge.get("fold_mm")).doubleValue();
        double leftMm = Double.NaN;
        double lengthMm = 0;
        Point last = null;
        for (double x = CARD_LEFT_MM + 1; x < sheet.widthMm() - 10; x += 2) {
            List<Raster.Run> runs =
                    down(sheet, x, 55, 150).stream()
                            .filter(run -> run.widthMm() > 0.4 && run.widthMm() < 0.8)
                            .toList();
            if (runs.isEmpty()) {
                continue;
            }
            Point here = new Point(x, runs.get(runs.size() - 1).middleMm());
            leftMm = last == null ? x : leftMm;
            lengthMm += last == null ? 0 : last.distanceMm(here);
            last = here;
        }
        assertEquals(foldMm, lengthMm, 6, "from near one end to near the other");
        assertTrue(leftMm < CARD_LEFT_MM + 4);
    }
}
