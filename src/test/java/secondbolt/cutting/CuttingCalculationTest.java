package secondbolt.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.cutting.line.CutPiece;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.cutting.line.SewingLine;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;
import secondbolt.worksheet.Subject;
import secondbolt.worksheet.Worksheet;

/** Cutting lines held against sums worked by hand. */
class CuttingCalculationTest {
    private static final double WITHIN_MM = 1e-6;

    private static CutPiece only(CuttingResult result) {
        assertEquals(1, result.pieces().size());
        return result.pieces().get(0);
    }

    private static Worksheet worksheet(CuttingResult result) {
        return new CuttingWorksheet(result, Tape.CENTIMETRE).worksheet();
    }

    private static void assertBox(Box box, double left, double top, double right, double bottom) {
        assertEquals(left, box.leftMm(), WITHIN_MM, "left");
        assertEquals(top, box.topMm(), WITHIN_MM, "top");
        assertEquals(right, box.rightMm(), WITHIN_MM, "right");
        assertEquals(bottom, box.bottomMm(), WITHIN_MM, "bottom");
    }

    @Test
    void addsTheAllowanceAllRoundARectangle() {
        CutPiece band =
                only(
                        Written.result(
                                "cm",
                                "pattern:",
                                "  seam allowance: {of: 1, included: false}",
                                "  pieces: {band: {cut: 2, rectangle: [6, 90]}}"));
        assertBox(band.cut().box(), -10, -10, 70, 910);
        assertEquals(80 * 920, band.cut().areaMm2(), WITHIN_MM);
        assertEquals(2, band.copies());
    }

    @Test
    void leavesTheFoldAsItIs() {
        CutPiece collar =
                only(
                        Written.result(
                                "cm",
                                "pattern:",
                                "  seam allowance: {of: 1, included: false}",
                                "  pieces:",
                                "    collar:",
                                "      cut: {main: 2, interfacing: 1}",
                                "      fold: left",
                                "      rectangle: [20, 8]",
                                "      allowance: {top: 0.6}"));
        assertBox(collar.cut().box(), 0, -6, 210, 90);
        assertEquals(210 * 96, collar.cut().areaMm2(), WITHIN_MM);
        assertEquals(
                "cut 2 of the main cloth, 1 of interfacing, on the fold", collar.instruction());
        assertEquals(3, collar.copies());
    }

    /**
     * Worked by hand: 70 mm flare over 600 mm of length on each side of a panel of 100 and 240 mm;
     * a hem of 40 mm turned once is mirrored at its fold, so it narrows as the panel does: from 240
     * mm and two seams at the fold to what the panel measures 40 mm above.
     */
    @Test
    void mirrorsAHemAtItsFold() {
        CutPiece gore =
                only(
                        Written.result(
                                "cm",
                                "pattern:",
                                "  seam allowance: {of: 1, included: false}",
                                "  pieces: {gore: {cut: 6, panel: {top: 10, bottom: 24, along:"
                                        + " 60}}}",
                                "hems: {hem: {on: [gore.hem], depth: 4, turned: once}}"));
        Box box = gore.cut().box();
        assertEquals(640, box.bottomMm() - gore.shape().box().topMm(), WITHIN_MM);
        double lean = 70.0 / 600;
        double aside = 10 * Math.hypot(1, lean);
        double atTheFold = 240 + 2 * aside;
        double atTheRawEdge = 240 - 2 * 40 * lean + 2 * aside;
        assertEquals(atTheFold, box.widthMm(), 1e-3);
        List<Point> raw =
                gore.cut().corners().stream()
                        .filter(p -> Math.abs(p.yMm() - box.bottomMm()) < 1e-3)
                        .toList();
        double left = raw.stream().mapToDouble(Point::xMm).min().orElseThrow();
        double right = raw.stream().mapToDouble(Point::xMm).max().orElseThrow();
        assertEquals(atTheRawEdge, right - left, 1e-3);
    }

    /** Source of the quarter inch and 6 mm: 4-H bulletin L-87, turn of the raw edge ¼ in. */
    @Test
    void addsTheTurnOfTheRawEdgeToAHemTurnedTwice() {
        String[] lines = {
            "pattern:",
            "  seam allowance: {of: 1, included: false}",
            "  pieces: {apron: {cut: 1, rectangle: [20, 30]}}",
            "hems: {hem: {on: [apron.bottom], depth: 2, turned: twice}}"
        };
        assertEquals(326, only(Written.result("cm", lines)).cut().box().bottomMm(), WITHIN_MM);
        assertEquals(
                (30 + 2 + 0.25) * 25.4,
                only(Written.result("in", lines)).cut().box().bottomMm(),
                WITHIN_MM);
    }

    @Test
    void turnsANarrowHemTwoTimesAndSewsAFacingInASeam() {
        String[] lines = {
            "pattern:",
            "  seam allowance: {of: 1, included: false}",
            "  pieces: {apron: {cut: 1, rectangle: [20, 30]}}",
            "hems:",
            "  a: {on: [apron.bottom], depth: 0.5, turned: narrow}",
            "  b: {on: [apron.left], turned: faced}"
        };
        Box box = only(Written.result("cm", lines)).cut().box();
        assertEquals(310, box.bottomMm(), WITHIN_MM);
        assertEquals(-10, box.leftMm(), WITHIN_MM);
    }

    @Test
    void addsNothingWhereTheAllowanceIsIncluded() {
        CutPiece band =
                only(
                        Written.result(
                                "cm",
                                "pattern:",
                                "  seam allowance: {of: 1, included: true}",
                                "  pieces: {band: {cut: 2, rectangle: [6, 90]}}"));
        assertBox(band.cut().box(), 0, 0, 60, 900);
        Point sewn = band.onSewingLine(band.number("right"), 300);
        assertEquals(50, sewn.xMm(), WITHIN_MM);
        assertEquals(4, SewingLine.of(band).size());
    }

    @Test
    void assumesTheUsualAllowanceAndTellsIt() {
        String[] lines = {"pattern:", "  pieces: {band: {cut: 2, rectangle: [6, 30]}}"};
        CuttingResult metric = Written.result("cm", lines);
        assertTrue(metric.isAssumed());
        assertEquals(Length.ofMillimetres(15), metric.allowance());
        assertEquals(Length.ofInches(5, 8), Written.result("in", lines).allowance());
        assertEquals(1, worksheet(metric).assumed().size());
    }

    /**
     * The allowance of a convex outline covers its edges' length times its width, and at most the
     * mitres beyond: each (1/tan(angle/2)) of the width squared, four times the width at the limit.
     */
    @Test
    void coversAboutThePerimeterTimesItsWidth() {
        CutPiece front = only(Written.result("cm", FRONT));
        double sewn =
                new Outline(
                                front.shape().edges().stream()
                                        .flatMap(e -> e.line().flattened(0.01).stream().skip(1))
                                        .toList())
                        .areaMm2();
        double perimeter =
                front.shape().edges().stream().mapToDouble(e -> e.line().lengthMm()).sum();
        double added = front.cut().areaMm2() - sewn;
        double turned = 2 * Math.PI * 15 * 15;
        assertTrue(added > perimeter * 15 - turned, added + " of " + perimeter * 15);
        assertTrue(added < perimeter * 15 + 6 * 4 * 15 * 15, added + " of " + perimeter * 15);
    }

    private static final String[] FRONT = {
        "pattern:",
        "  seam allowance: {of: 1.5, included: false}",
        "  pieces:",
        "    front:",
        "      cut: pair",
        "      outline:",
        "        - {start: [0, 9]}",
        "        - {edge: neckline, to: [7.5, 0], through: [[3, 8.4], [6, 4.6]]}",
        "        - {edge: shoulder, to: [19, 4]}",
        "        - {edge: armhole, to: [29, 24], through: [[18.5, 13], [21.5, 20]]}",
        "        - {edge: side, to: [30, 70]}",
        "        - {edge: hem, to: [0, 74], through: [[16, 73.4]]}",
        "        - {edge: centre front, to: start}"
    };

    @Test
    void keepsEveryPointOfAStraightEdgeItsAllowanceAway() {
        CutPiece front = only(Written.result("cm", FRONT));
        EdgeLine side = front.edge(front.number("side"));
        Point cut = front.onCuttingLine(front.number("side"), side.lengthMm() / 2);
        assertEquals(15, side.distanceMm(cut), WITHIN_MM);
        assertTrue(cut.xMm() > 300, "outside, was " + cut);
    }

    @Test
    void stopsWhereTheCuttingLineCrossesItself() {
        CuttingResult result =
                Written.result(
                        "cm",
                        "pattern:",
                        "  seam allowance: {of: 1.5, included: false}",
                        "  pieces:",
                        "    slit:",
                        "      cut: 1",
                        "      outline:",
                        "        - {start: [0, 0]}",
                        "        - {edge: left top, to: [10, 0]}",
                        "        - {edge: slit left, to: [10, 20]}",
                        "        - {edge: slit end, to: [12, 20]}",
                        "        - {edge: slit right, to: [12, 0]}",
                        "        - {edge: right top, to: [22, 0]}",
                        "        - {edge: right, to: [22, 30]}",
                        "        - {edge: bottom, to: [0, 30]}",
                        "        - {edge: left, to: start}");
        var findings = worksheet(result).findings();
        assertEquals(1, findings.size());
        assertEquals("cutting-line-crosses", findings.get(0).code());
        assertEquals(new Subject.Piece("slit"), findings.get(0).about());
        assertEquals("slit", findings.get(0).about().words());
        assertTrue(findings.get(0).text().contains("crosses itself"), findings.toString());
    }

    @Test
    void refusesHemsOnEdgesThatAreNotThere() {
        String pattern = "pattern: {pieces: {apron: {cut: 1, fold: left, rectangle: [20, 30]}}}";
        assertEquals(
                List.of("3:19 `apron.botom`, which is no edge of apron"),
                Written.mistakes(
                        pattern, "hems: {hem: {on: [apron.botom], depth: 2, turned: once}}"));
        assertEquals(
                1,
                Written.mistakes(pattern, "hems: {hem: {on: [apron.left], depth: 2, turned: once}}")
                        .size());
        assertEquals(
                1,
                Written.mistakes(pattern, "hems: {hem: {on: [skirt.hem], depth: 2, turned: once}}")
                        .size());
        assertEquals(
                1,
                Written.mistakes(pattern, "hems: {hem: {on: [apron.bottom], turned: once}}")
                        .size());
    }
}
