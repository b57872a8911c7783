package secondbolt.file.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;

/** A drawing is held to sizes that a piece can have, and told where it leaves them. */
class SvgBoundsTest {
    private static final String MM = "width='400mm' height='300mm' viewBox='0 0 400 300'";

    private static String svg(String body) {
        return "<svg " + MM + ">\n" + body + "\n</svg>";
    }

    private static List<Mistake> mistakes(String text) {
        Mistakes mistakes = new Mistakes();
        Optional<List<TracedEdge>> read = SvgDrawing.read("a.svg", text, mistakes);
        assertEquals(mistakes.isEmpty(), read.isPresent());
        return mistakes.inOrder();
    }

    private static String first(String text) {
        List<Mistake> all = mistakes(text);
        assertFalse(all.isEmpty(), text);
        return all.get(0).place().line()
                + ":"
                + all.get(0).place().column()
                + " "
                + all.get(0).found();
    }

    /** What is drawn, and where and as what it is refused. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "<path id='a' d='M0 0H5001V5Z'/>|"
                        + " 2:17 an edge with a point more than 5 m from the drawing's corner",
                "<path id='a' d='M0 0H1e308V5Z'/>| 2:22 `1e308V5Z`",
                "<path id='a' d='M0 0H1e999V5Z'/>| 2:22 `1e999V5Z`",
                "<path id='a' d='M0 0C9e8 0 0 0 9 9V5Z'/>|"
                        + " 2:17 an edge with a point more than 5 m from the drawing's corner",
                "<g transform='scale(1e9)'><path id='a' d='M0 0H5V5Z'/></g>|"
                        + " 2:43 an edge with a point more than 5 m from the drawing's corner",
                "<g transform='scale(1e-9)'><path id='a' d='M0 0H5V5Z'/></g>|"
                        + " 2:44 an edge of less than 1 mm",
                "<g transform='scale(0)'/>| 2:15 a transform that squeezes the drawing to a line",
                "<g transform='scale(1 0)'/>| 2:15 a transform that squeezes the drawing to a line",
                "<g transform='skewX(90)'/>| 2:15 a transform that squeezes the drawing to a line",
                "<g transform='matrix(1 2 2 4 0 0)'/>|"
                        + " 2:15 a transform that squeezes the drawing to a line",
                "<path id='a' d='M0 0A1e-320 9 0 0 1 5 5Z'/>| 2:22 an arc that is too flat or too large",
                "<path id='_x001B_red' d='M0 0H5V5Z'/>|"
                        + " 2:1 an edge named `\\u001Bred`, with a letter that nobody sees",
                "<path id='a&#x202E;b' d='M0 0H5V5Z'/>|"
                        + " 2:1 an edge named `a\\u202Eb`, with a letter that nobody sees",
                "<path id='a' d='M0 0H&#53;.x'/>| 2:28 `x`",
                "<path id=\"a d='\" d='M0 0 x'/>| 2:26 `x`",
                "<path id='a' d='M0 0H5V5Z'><title>&no;</title></path>| 2:39 text that is not well-formed XML",
                "<path id='a' d='M0 0H5V5Z'><title>&#x1;</title></path>| 2:40 text that is not well-formed XML"
            })
    void refuses(String body, String told) {
        assertEquals(told, first(svg(body)));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "M0 0H100V100A9 9 0 0 1 100 100H0Z",
                "M0 0H100V100A0 9 0 0 1 0 100Z",
                "M0 0H100V100A1e9 1e9 0 0 1 0 100Z",
                "M0 0H100V100A1e-9 1e-9 0 0 1 0 100Z"
            })
    void takesArcsAsTheStandardSays(String d) {
        List<Mistake> told = mistakes(svg("<path id='a' d='" + d + "'/>"));
        assertEquals(List.of(), told);
    }

    @Test
    void drawsAFlatArcStraight() {
        Mistakes mistakes = new Mistakes();
        String flat = svg("<path id='a' d='M0 0H100V100A1e9 1e9 0 0 1 0 100Z'/>");
        double length = SvgDrawing.read("a", flat, mistakes).orElseThrow().get(0).line().lengthMm();
        assertEquals(400, length, 1e-6);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = ';',
            value = {
                "width='6m' height='6m' viewBox='0 0 9 9'; without a real size",
                "width='6000mm' height='1mm' viewBox='0 0 6 1'; a drawing of more than 5 m",
                "width='1e300mm' height='1mm' viewBox='0 0 6 1'; `1e300`",
                "width='400mm' height='300mm' viewBox='0 0 1e-320 1e-320'; squeezes"
            })
    void refusesASize(String size, String told) {
        String found = first("<svg " + size + "><path id='a' d='M0 0H5V5Z'/></svg>");
        assertTrue(found.startsWith("1:1 ") && found.contains(told), found);
    }

    @Test
    void boundsWhatADrawingHolds() {
        assertTrue(
                first(svg("<path id='a' d='M0 0" + "h1v1".repeat(3000) + "z'/>"))
                        .endsWith("an edge of more than 5000 steps"));
        assertTrue(
                first(svg("<polygon id='a' points='" + "1,2 ".repeat(6000) + "'/>"))
                        .endsWith("an edge of more than 5000 steps"));
        StringBuilder edges = new StringBuilder();
        for (int i = 0; i < 300; i++) {
            edges.append("<path id='a").append(i).append("' d='M0 0H5'/>\n");
        }
        List<Mistake> many = mistakes(svg(edges.toString()));
        assertEquals(202, many.get(0).place().line());
        assertEquals("a drawing of more than 200 edges or 5000 steps", many.get(0).found());
        assertTrue(first(svg("<g>".repeat(99) + "</g>".repeat(99))).contains("60 deep"));
        assertTrue(
                first(svg("<path id='" + "x".repeat(61) + "' d='M0 0H5V5Z'/>"))
                        .contains("an edge named"));
        assertEquals(
                "2:20 a number of 2000 letters",
                first(svg("<path id='a' d='M0 " + "1".repeat(2000) + "H5V5Z'/>")));
    }

    /** As many of one thing as a file of 1 MB holds: each comes to an end, and is read or told. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "<text>{<tspan>}x{</tspan>}</text>",
                "{<desc/>}",
                "{<circle/>}",
                "{<path/>}",
                "{<path id='a' d='M0 0 x'/>}",
                "<path id='{a }' d='M0 0H5V5Z'/>",
                "<path id='a' d='M0 0{ }x'/>",
                "<path id='a' d='M0 0H{1}'/>",
                "<path id='a' style='{ }' d='M0 0'/>",
                "<path id='a' d='M0 0H5V5Z'><title>{x }{<b/>}</title></path>",
                "<g transform='{scale(1)}'/>",
                "<g transform='scale({1 })'/>",
                "<g transform='{x}'/>",
                "{<!-- - -->}",
                "{<?a b?>}",
                "{<![CDATA[x]]>}",
                "<path {a='1' }/>",
                "<path id='{&#65;}' d='M0 0H5V5Z'/>",
                "<path id='{&amp;}'{ }d='x'/>"
            })
    void comesToAnEnd(String kind) {
        StringBuilder body = new StringBuilder();
        for (String part : kind.split("[{]", -1)) {
            int close = part.indexOf('}');
            if (close >= 0) {
                String again = part.substring(0, close);
                body.append(again.repeat(400_000 / again.length()));
            }
            body.append(part.substring(close + 1));
        }
        assertFalse(mistakes(svg(body.toString())).isEmpty());
    }
}
