package secondbolt.file.svg;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
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
    private static final String DRAWING = "an SVG drawing: an `svg` element with edges in it";

    private final SvgSource text;
    private final Mistakes mistakes;
    private final Deque<Level> levels = new ArrayDeque<>();
    private final List<TracedEdge> edges = new ArrayList<>();
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

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        // A drawing may not make us fetch or unfold anything.
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        return factory;
    }

    private void readAll() {
        try {
            XMLStreamReader xml = factory().createXMLStreamReader(new StringReader(text.text()));
            while (xml.hasNext()) {
                int event = xml.next();
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
            passOver(xml);
        } else if (GROUPS.contains(name) && !name.equals("svg")) {
            levels.push(new Level(transformed(xml, begin)));
        } else if (EDGES.contains(name)) {
            edge(xml, begin, name);
        } else {
            if (REFUSED.contains(name) || name.equals("svg")) {
                tell(begin, "the element `" + name + "`", "its line as a path");
            }
            passOver(xml);
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
                            attribute(xml, "width"),
                            attribute(xml, "height"),
                            attribute(xml, "viewBox"));
            levels.push(new Level(size.times(ownTransform(xml, begin))));
            return true;
        } catch (Slip slip) {
            tell(begin, slip.found(), slip.right());
            return false;
        }
    }

    private static Optional<String> attribute(XMLStreamReader xml, String name) {
        return Optional.ofNullable(xml.getAttributeValue(null, name))
                .or(() -> Optional.ofNullable(xml.getAttributeValue("", name)));
    }

    private static boolean isHidden(XMLStreamReader xml) {
        String style = attribute(xml, "style").orElse("").replace(" ", "");
        return attribute(xml, "display").orElse("").equals("none")
                || style.contains("display:none");
    }

    private Affine transformed(XMLStreamReader xml, int begin) {
        return levels.getFirst().toMm().times(ownTransform(xml, begin));
    }

    private Affine ownTransform(XMLStreamReader xml, int begin) {
        String style = attribute(xml, "style").orElse("").replace(" ", "");
        if (style.startsWith("transform:") || style.contains(";transform:")) {
            tell(begin, "a transform in a style", "an attribute transform");
        }
        try {
            return Affine.parse(attribute(xml, "transform").orElse(""));
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

    private static void passOver(XMLStreamReader xml) throws XMLStreamException {
        for (int depth = 1; depth > 0; ) {
            int event = xml.next();
            depth +=
                    event == XMLStreamConstants.START_ELEMENT
                            ? 1
                            : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
        }
    }

    private void edge(XMLStreamReader xml, int begin, String element) throws XMLStreamException {
        Affine toMm = transformed(xml, begin);
        Shapes shapes = new Shapes(name -> attribute(xml, name));
        String id = attribute(xml, "id").orElse("");
        String attribute = element.equals("path") ? "d" : "points";
        try {
            if (element.equals("rect")) {
                for (Shapes.Side side : shapes.sides()) {
                    add(side.name(), toMm.of(side.line()), begin);
                }
                passOver(xml);
            } else {
                EdgeLine line = toMm.of(shapes.line(element));
                String title = title(xml);
                add(title.isEmpty() ? EdgeName.ofId(id) : title, line, begin);
            }
        } catch (Slip slip) {
            slipped(slip, begin, attribute);
            passOver(xml);
        }
    }

    /** The title within an element, which is read to its end. */
    private static String title(XMLStreamReader xml) throws XMLStreamException {
        String title = "";
        while (xml.next() != XMLStreamConstants.END_ELEMENT) {
            if (!xml.isStartElement()) {
                continue;
            }
            if (xml.getLocalName().equals("title") && title.isEmpty()) {
                title = EdgeName.ofTitle(xml.getElementText());
            } else {
                passOver(xml);
            }
        }
        return title;
    }

    private void add(String name, EdgeLine line, int begin) {
        Set<String> names = new HashSet<>();
        edges.forEach(edge -> names.add(edge.name()));
        if (name.isEmpty()) {
            tell(begin, "an edge without a name", "an id, or a <title> within it");
        } else if (names.contains(name)) {
            tell(begin, "a second edge named `" + name + "`", "a name of its own for each edge");
        } else {
            edges.add(new TracedEdge(name, line, text.place(begin)));
        }
    }
}
