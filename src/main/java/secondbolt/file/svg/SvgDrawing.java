package secondbolt.file.svg;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.file.source.Visible;
import secondbolt.shape.EdgeLine;

/**
 * Reads a traced drawing at real size.
 *
 * <p>Each path, line, polyline or polygon is one edge, named by its {@code id} (hyphens and
 * underscores stand for blanks) or by a {@code <title>} within it, which wins. A rect is the four
 * edges top, right, bottom and left. Groups may be nested and carry transforms. Together the edges
 * make one closed outline, drawn in any order and direction.
 */
public final class SvgDrawing {
    private static final Set<String> EDGES = Set.of("path", "line", "polyline", "polygon", "rect");
    private static final Set<String> GROUPS = Set.of("svg", "g", "a");
    private static final Set<String> REFUSED = Set.of("circle", "ellipse", "use");
    private static final String NAME = "a name of " + Bounds.LONGEST_NAME + " letters at most";
    private static final String MOST =
            Bounds.MOST_EDGES + " edges or " + Bounds.MOST_STEPS + " steps";
    private static final String DRAWING = "an SVG drawing: an `svg` element with edges in it";

    private final SvgSource text;
    private final Mistakes mistakes;
    private final Deque<Level> levels = new ArrayDeque<>();
    private final List<TracedEdge> edges = new ArrayList<>();
    private final Set<String> names = new HashSet<>();
    private int steps;
    private final int mistakesBefore;

    private SvgDrawing(SourceFile source, Mistakes mistakes) {
        this.text = new SvgSource(source);
        this.mistakes = mistakes;
        this.mistakesBefore = mistakes.count();
    }

    /** One open group: how its units become millimetres. */
    private record Level(Affine toMm) {}

    /**
     * The edges of a drawing, end to end from the first drawn on; where two ends nearly meet,
     * within half a millimetre, the later is moved to the earlier.
     *
     * @param fileName as mistakes shall name it
     * @param text the whole file
     * @param mistakes told what is wrong with it; then there is no result
     */
    public static Optional<List<TracedEdge>> read(String fileName, String text, Mistakes mistakes) {
        SourceFile source = SourceFile.of(fileName, text);
        SvgDrawing drawing = new SvgDrawing(source, mistakes);
        drawing.readAll();
        if (mistakes.count() == drawing.mistakesBefore && drawing.edges.isEmpty()) {
            drawing.tell(0, "a drawing without edges", "a path, line, polyline or polygon each");
        }
        return mistakes.count() > drawing.mistakesBefore
                ? Optional.empty()
                : new EdgeChain(source, mistakes).closed(drawing.edges);
    }

    private void readAll() {
        try {
            XMLStreamReader xml = Xml.open(text.text());
            while (xml.hasNext()) {
                int event = Xml.next(xml);
                if (event == XMLStreamConstants.START_ELEMENT && !open(xml)) {
                    return;
                }
                if (event == XMLStreamConstants.END_ELEMENT) {
                    levels.pop();
                }
            }
        } catch (XMLStreamException e) {
            mistakes.add(
                    text.source()
                            .mistake(
                                    e.getLocation() == null
                                            ? text.place(0)
                                            : text.place(e.getLocation()),
                                    "text that is not well-formed XML",
                                    DRAWING));
        }
    }

    private void tell(int offset, String found, String right) {
        mistakes.add(text.source().mistake(text.place(offset), found, right));
    }

    /** Opens a group, or reads or passes over what else begins; false where reading must end. */
    private boolean open(XMLStreamReader xml) throws XMLStreamException {
        int begin = text.beginning(xml.getLocation());
        String name = xml.getLocalName();
        if (levels.isEmpty()) {
            return openDrawing(xml, begin);
        }
        if (isHidden(xml)) {
            Xml.passOver(xml);
        } else if (GROUPS.contains(name) && !name.equals("svg")) {
            if (levels.size() > Bounds.DEEPEST) {
                tell(begin, "groups more than " + Bounds.DEEPEST + " deep", "a few levels");
                return false;
            }
            levels.push(new Level(transformed(xml, begin)));
        } else if (EDGES.contains(name)) {
            edge(xml, begin, name);
        } else {
            if (REFUSED.contains(name) || name.equals("svg")) {
                tell(begin, "the element `" + name + "`", "its line as a path");
            }
            Xml.passOver(xml);
        }
        return true;
    }

    private boolean openDrawing(XMLStreamReader xml, int begin) {
        if (!xml.getLocalName().equals("svg")) {
            tell(begin, "the element `" + xml.getLocalName() + "`", DRAWING);
            return false;
        }
        try {
            Affine size =
                    RealSize.of(
                            Xml.attribute(xml, "width"),
                            Xml.attribute(xml, "height"),
                            Xml.attribute(xml, "viewBox"));
            levels.push(new Level(transformed(size, xml, begin)));
            return true;
        } catch (Slip slip) {
            tell(begin, slip.found(), slip.right());
            return false;
        }
    }

    private static boolean isHidden(XMLStreamReader xml) {
        String style = Xml.attribute(xml, "style").orElse("").replace(" ", "");
        return Xml.attribute(xml, "display").orElse("").equals("none")
                || style.contains("display:none");
    }

    private Affine transformed(XMLStreamReader xml, int begin) {
        return transformed(levels.getFirst().toMm(), xml, begin);
    }

    private Affine transformed(Affine toMm, XMLStreamReader xml, int begin) {
        Affine whole = toMm.times(ownTransform(xml, begin));
        if (whole.isSound()) {
            return whole;
        }
        slipped(
                new Slip(
                        0,
                        "a transform that squeezes the drawing to a line",
                        "one that keeps its size"),
                begin,
                "transform");
        return toMm;
    }

    private Affine ownTransform(XMLStreamReader xml, int begin) {
        String style = Xml.attribute(xml, "style").orElse("").replace(" ", "");
        if (style.startsWith("transform:") || style.contains(";transform:")) {
            tell(begin, "a transform in a style", "an attribute transform");
        }
        try {
            return Affine.parse(Xml.attribute(xml, "transform").orElse(""));
        } catch (Slip slip) {
            slipped(slip, begin, "transform");
            return Affine.NONE;
        }
    }

    private void slipped(Slip slip, int begin, String attribute) {
        mistakes.add(
                text.source()
                        .mistake(
                                text.place(begin, attribute, slip.at()),
                                slip.found(),
                                slip.right()));
    }

    private void edge(XMLStreamReader xml, int begin, String element) throws XMLStreamException {
        Affine toMm = transformed(xml, begin);
        Shapes shapes = new Shapes(name -> Xml.attribute(xml, name));
        String id = Xml.attribute(xml, "id").orElse("");
        String attribute = element.equals("path") ? "d" : "points";
        try {
            if (element.equals("rect")) {
                for (Shapes.Side side : shapes.sides()) {
                    add(side.name(), Bounds.checked(toMm.of(side.line())), begin);
                }
                Xml.passOver(xml);
            } else {
                EdgeLine line = Bounds.checked(toMm.of(shapes.line(element)));
                String title = Xml.title(xml);
                add(title.isEmpty() ? EdgeName.ofId(id) : title, line, begin);
            }
        } catch (Slip slip) {
            slipped(slip, begin, attribute);
            Xml.passOver(xml);
        }
    }

    private void add(String name, EdgeLine line, int begin) {
        steps += line.steps().size();
        if (name.isEmpty()) {
            tell(begin, "an edge without a name", "an id, or a <title> within it");
        } else if (name.codePointCount(0, name.length()) > Bounds.LONGEST_NAME) {
            tell(begin, "an edge named `" + name + "`", NAME);
        } else if (name.codePoints().anyMatch(Visible::isUnseen)) {
            tell(begin, "an edge named `" + name + "`, with a letter that nobody sees", NAME);
        } else if (edges.size() == Bounds.MOST_EDGES || steps > Bounds.MOST_STEPS) {
            tell(begin, "a drawing of more than " + MOST, "one piece, drawn with fewer points");
        } else if (!names.add(name)) {
            tell(begin, "a second edge named `" + name + "`", "a name of its own for each edge");
        } else {
            edges.add(new TracedEdge(name, line, text.place(begin)));
        }
    }
}
