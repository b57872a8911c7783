package secondbolt.file.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/** Drawings at real size: units, transforms, names, ends that meet, and mistakes. */
class SvgDrawingTest {
    private static final String MM = "width=\"400mm\" height=\"300mm\" viewBox=\"0 0 400 300\"";

    private static String svg(String size, String body) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" " + size + ">\n" + body + "\n</svg>\n";
    }

    private static List<TracedEdge> edges(String size, String body) {
        Mistakes mistakes = new Mistakes();
        Optional<List<TracedEdge>> edges =
                SvgDrawing.read("pieces/pocket.svg", svg(size, body), mistakes);
        assertEquals(List.of(), mistakes.inOrder());
        return edges.orElseThrow();
    }

    private static Mistake mistake(String text) {
        Mistakes mistakes = new Mistakes();
        assertTrue(SvgDrawing.read("pieces/pocket.svg", text, mistakes).isEmpty());
        assertEquals(1, mistakes.count(), mistakes.inOrder().toString());
        return mistakes.inOrder().get(0);
    }

    private static void assertAt(double xMm, double yMm, Point point) {
        assertEquals(0, point.distanceMm(new Point(xMm, yMm)), 1e-9, "was " + point);
    }

    /** CSS Values and Units 3, section 6.2: 1 in = 2.54 cm = 96 px = 72 pt = 6 pc. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "2in, 50.8",
        "5.08cm, 50.8",
        "50.8mm, 50.8",
        "144pt, 50.8",
        "12pc, 50.8",
        "192px, 50.8"
    })
    void takesTheSizeFromItsUnit(String width, double expectedMm) {
        String size = "width='%s' height='%s' viewBox='0 0 100 100'".formatted(width, width);
        TracedEdge edge = edges(size, "<path id='all' d='M0 0H100V100H0Z'/>").get(0);
        assertEquals(4 * expectedMm, edge.line().lengthMm(), 1e-9);
    }

    /** Without a viewBox a unit is a px: 96 of them make an inch, whatever the drawing's size. */
    @Test
    void takesUnitsForPxWithoutAViewBox() {
        TracedEdge edge =
                edges("width='30cm' height='20cm'", "<path id='all' d='M0 0H96V96H0Z'/>").get(0);
        assertEquals(4 * 25.4, edge.line().lengthMm(), 1e-9);
    }

    @Test
    void beginsWhereTheViewBoxDoes() {
        String size = "width='20cm' height='10cm' viewBox='-10 20 100 50'";
        EdgeLine line = edges(size, "<polygon id='all' points='0,30 5,30 5,40'/>").get(0).line();
        assertAt(20, 20, line.start());
        assertEquals(10 + 20 + Math.hypot(10, 20), line.lengthMm(), 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "viewBox='0 0 10 10'",
                "width='100%' height='100%' viewBox='0 0 10 10'",
                "width='400' height='300' viewBox='0 0 400 300'",
                "width='40em' height='30em' viewBox='0 0 400 300'",
                "width='40cm' viewBox='0 0 400 300'"
            })
    void refusesADrawingWithoutARealSize(String size) {
        Mistake mistake = mistake(svg(size, "<path id='a' d='M0 0H5V5Z'/>"));
        assertTrue(mistake.found().startsWith("a drawing without a real size"));
        assertTrue(mistake.right().contains("width=\"30cm\" height=\"40cm\""));
        assertEquals("pieces/pocket.svg:1:1", mistake.place().toString());
    }

    @Test
    void refusesAStretchedDrawing() {
        Mistake mistake =
                mistake(
                        svg(
                                "width='400mm' height='300mm' viewBox='0 0 400 310'",
                                "<path id='a' d='M0 0H5V5Z'/>"));
        assertTrue(mistake.found().startsWith("a drawing scaled differently"));
    }

    /** Each by hand, on the point (10, 0) and the group's shift of (100, 50). */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = ';',
            value = {
                "translate(5); 115; 50",
                "translate(5,-7); 115; 43",
                "scale(2); 120; 50",
                "scale(2 3) translate(1 1); 122; 53",
                "rotate(90); 100; 60",
                "rotate(90, 10, 10); 120; 60",
                "skewX(45) translate(0, 4); 114; 54",
                "skewY(45); 110; 60",
                "matrix(0 2 -1 0 7 8); 107; 78"
            })
    void appliesTransforms(String transform, double xMm, double yMm) {
        EdgeLine line =
                edges(
                                MM,
                                "<g transform='translate(100,50)'><g><polygon id='a' transform='"
                                        + transform
                                        + "' points='10,0 30,0 30,30'/></g></g>")
                        .get(0)
                        .line();
        assertAt(xMm, yMm, line.start());
    }

    @Test
    void chainsEdgesDrawnInAnyOrderAndDirection() {
        List<TracedEdge> edges =
                edges(
                        MM,
                        "<line id='centre-front' x1='10' y1='10' x2='10' y2='110'/>\n"
                                + "<polyline id='side_x20_seam' points='90,10 90,110'/>\n"
                                + "<g><line id='top_edge' x1='90' y1='10' x2='10.2' y2='10'/>\n"
                                + "<path id='x' d='M90 110q-40 20-79.8 .3'>"
                                + "<desc/><title> lower\n hem </title></path></g>");
        assertEquals(
                List.of("centre front", "lower hem", "side seam", "top edge"),
                edges.stream().map(TracedEdge::name).toList());
        for (int i = 0; i < edges.size(); i++) {
            Point end = edges.get(i).line().end();
            assertEquals(end, edges.get((i + 1) % edges.size()).line().start());
        }
        assertAt(10, 110, edges.get(0).line().end());
        assertAt(10, 10, edges.get(3).line().end());
        assertEquals("pieces/pocket.svg:3:1", edges.get(2).place().toString());
    }

    @Test
    void tellsEndsThatDoNotMeet() {
        Mistake mistake =
                mistake(
                        svg(
                                MM,
                                "<line id='a' x1='0' y1='0' x2='50' y2='0'/>\n"
                                        + "<polyline id='b' points='50,0.6 50,50 0,50 0,0'/>"));
        assertEquals(
                "the end of `a` at [50.0, 0.0] mm, from which the nearest end of `b`, at"
                        + " [50.0, 0.6] mm, is 0.6 mm off",
                mistake.found());
        assertEquals(2, mistake.place().line());
        Mistake open = mistake(svg(MM, "<polyline id='b' points='50,0 50,50 0,50'/>"));
        assertTrue(open.found().contains("the nearest end of `b`, at [50.0, 0.0] mm"));
    }

    @Test
    void namesTheSidesOfARect() {
        List<TracedEdge> edges =
                edges(MM, "<rect id='pocket' x='5' y='6' width='120' height='140'/>");
        assertEquals(
                List.of("top", "right", "bottom", "left"),
                edges.stream().map(TracedEdge::name).toList());
        assertEquals(120, edges.get(0).line().lengthMm(), 1e-9);
    }

    @Test
    void passesOverWhatIsNoEdge() {
        String body =
                "<title>Pocket</title><defs><path d='M0 0L1 1'/></defs><text x='1'>top</text>"
                        + "<g style='display: none'><path d='nonsense'/></g>"
                        + "<polygon id='all' points='0,0 9,0 9,9'/>";
        assertEquals(1, edges(MM, body).size());
    }

    @Test
    void tellsWhereAPathGoesWrong() {
        Mistake mistake = mistake(svg(MM, "  <path id='a'\n   d='M 0 0 L 10 x Z'/>"));
        assertEquals("pieces/pocket.svg:3:18", mistake.place().toString());
        assertEquals("`x Z`", mistake.found());
        assertEquals("a number such as 12.5", mistake.right());
        assertEquals("   d='M 0 0 L 10 x Z'/>", mistake.line());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = ';',
            value = {
                "<path d='M0 0H5V5Z'/>; an edge without a name",
                "<circle id='a' r='5'/>; the element `circle`",
                "<path id='a' d='M0 0H5V5Z'/><path id='a' d='M0 0H5V5Z'/>;"
                        + " a second edge named `a`",
                "<path id='a' d='M0 0H5M5 5Z'/>; a path that leaves off and goes on elsewhere",
                "<path id='a' d='H5'/>; `H5`",
                "<path id='a' d='M0 0'/>; a path without a line",
                "<path id='a' d='M0 0 A5 5 0 2 0 9 9'/>; `2 0 9 9`",
                "<polygon id='a' points='1,2 3'/>; the end of `1,2 3`",
                "<path id='a' transform='turn(3)' d='M0 0H5V5Z'/>;"
                        + " the transform `turn` with 1 number",
                "<g/>; a drawing without edges",
                "<g>; text that is not well-formed XML"
            })
    void tellsMistakes(String body, String found) {
        assertEquals(found, mistake(svg(MM, body)).found());
    }

    /** A loop, and an edge of 1 mm of which nothing is left once its ends are made to meet. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "M0.5 0H50, M50 0c9 9 -9 9 0 0, M50 0V80L0.5 0",
        "M0.5 0H50, M1.04 0H0.02, M50 0V80L0.55 0"
    })
    void tellsAnEdgeThatEndsWhereItBegins(String top, String side, String hem) {
        String path = "<path id='%s' d='%s'/>\n";
        Mistake told =
                mistake(
                        svg(
                                MM,
                                path.formatted("top", top)
                                        + path.formatted("side", side)
                                        + path.formatted("hem", hem)));
        assertEquals("the edge `side`, which ends where it begins", told.found());
        assertEquals(3, told.place().line());
    }

    @Test
    void unfoldsAndFetchesNothing() {
        String entity =
                "<!DOCTYPE svg [<!ENTITY d SYSTEM \"file:///etc/hostname\">]>\n"
                        + svg(MM, "<path id='a' d='M0 0H5V5Z'><title>&d;</title></path>");
        mistake(entity);
    }

    @Test
    void tellsAFileThatIsNoDrawing() {
        assertEquals("the element `html`", mistake("<html></html>").found());
        assertEquals("text that is not well-formed XML", mistake("front: 3 cm").found());
        assertEquals("text that is not well-formed XML", mistake("").found());
    }
}
