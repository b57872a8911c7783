package secondbolt.draw.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import secondbolt.draw.Drawing;
import secondbolt.draw.Lettering;
import secondbolt.draw.Mark;
import secondbolt.draw.Pen;
import secondbolt.draw.Sketch;
import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/** The element reads back as XML. */
// It sets the locale of all that runs.
@Isolated
class SvgRendererTest {
    private static final Box FRAME = new Box(-5, 0, 100, 50.25);

    private static Document parse(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    @Test
    void showsTheFrameInMillimetres() throws Exception {
        String svg = SvgRenderer.render(new Sketch().drawing("Band", FRAME));
        assertEquals("-5 0 100 50.25", parse(svg).getDocumentElement().getAttribute("viewBox"));
    }

    /** XML 1.0, section 2.2 and 2.4. */
    @Test
    void writesAnyTextSoThatXmlReadsItBack() throws Exception {
        String text = "5/8\" <wide> & 'long' \u0001 א ½";
        Drawing drawing =
                new Sketch()
                        .label(text, new Point(1, 2), Lettering.plain(4))
                        .drawing("<Band> & \"hem\"", FRAME);
        Document document = parse(SvgRenderer.render(drawing));
        String title = document.getElementsByTagName("title").item(0).getTextContent();
        String label = document.getElementsByTagName("text").item(0).getTextContent();
        assertEquals("<Band> & \"hem\"", title);
        assertEquals(text.replace('\u0001', '\uFFFD'), label);
    }

    @Test
    void writesNumbersTheSameInEveryCountry() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            Drawing drawing =
                    new Sketch()
                            .line(new Point(-1e-9, 0.1 + 0.2), new Point(1e7, 1), Pen.DASHED)
                            .drawing("", FRAME);
            String svg = SvgRenderer.render(drawing);
            assertTrue(svg.contains("d=\"M0 0.3L10000000 1\""), svg);
            assertTrue(svg.contains("stroke-dasharray=\"3 2\""), svg);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void clipsAWindowByAnInnerElement() throws Exception {
        Drawing inner = new Sketch().line(Path.circle(Point.ORIGIN, 5), Pen.CUT).drawing("", FRAME);
        Mark window = new Mark.Window(inner, new Box(1, 2, 30, 20), new Point(7, 8));
        Document document = parse(SvgRenderer.render(new Sketch().add(window).drawing("", FRAME)));
        var nested = (org.w3c.dom.Element) document.getElementsByTagName("svg").item(1);
        assertEquals("1 2 30 20", nested.getAttribute("viewBox"));
        assertEquals("7", nested.getAttribute("x"));
        assertEquals("30", nested.getAttribute("width"));
    }
}
