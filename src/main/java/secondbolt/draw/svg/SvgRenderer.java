package secondbolt.draw.svg;

import java.util.Locale;
import java.util.stream.Collectors;
import secondbolt.draw.Align;
import secondbolt.draw.Decimals;
import secondbolt.draw.Drawing;
import secondbolt.draw.Lettering;
import secondbolt.draw.Mark;
import secondbolt.draw.Pen;
import secondbolt.draw.Shade;
import secondbolt.shape.Box;

/** Renders a drawing as an {@code svg} element to stand in an HTML page. */
public final class SvgRenderer implements Mark.Visitor<String> {
    private static final String FONTS = "'Source Sans 3', 'Source Sans Pro', sans-serif";

    /** PDF's own miter limit (ISO 32000-1, table 52), so that corners look alike on both. */
    private static final String MITER_LIMIT = "10";

    private SvgRenderer() {}

    /**
     * The drawing as one element, black on what lies behind it, as wide as its place in the page.
     * Its view box is the drawing's frame in millimetres.
     */
    public static String render(Drawing drawing) {
        String start =
                "<svg xmlns=\"http://www.w3.org/2000/svg\""
                        + attribute("viewBox", box(drawing.frame()))
                        + attribute("width", "100%")
                        + attribute("role", "img")
                        + attribute("font-family", FONTS)
                        + attribute("stroke-miterlimit", MITER_LIMIT)
                        + ">\n";
        String title = "<title>" + SvgText.escaped(drawing.title()) + "</title>\n";
        return start + title + marks(drawing) + "</svg>\n";
    }

    private static String marks(Drawing drawing) {
        SvgRenderer renderer = new SvgRenderer();
        return drawing.marks().stream()
                .map(mark -> mark.accept(renderer))
                .collect(Collectors.joining());
    }

    @Override
    public String line(Mark.Line line) {
        return "<path"
                + attribute("d", PathData.of(line.path()))
                + attribute("fill", "none")
                + attribute("stroke", "#000")
                + attribute("stroke-width", Decimals.text(line.pen().widthMm()))
                + dashes(line.pen())
                + "/>\n";
    }

    private static String dashes(Pen pen) {
        if (pen.dashesMm().isEmpty()) {
            return "";
        }
        return attribute(
                "stroke-dasharray",
                pen.dashesMm().stream().map(Decimals::text).collect(Collectors.joining(" ")));
    }

    @Override
    public String fill(Mark.Fill fill) {
        return "<path"
                + attribute("d", PathData.of(fill.path()))
                + attribute("fill", grey(fill.shade()))
                + "/>\n";
    }

    private static String grey(Shade shade) {
        String level = String.format(Locale.ROOT, "%02x", Math.round(shade.lightness() * 255));
        return "#" + level.repeat(3);
    }

    @Override
    public String label(Mark.Label label) {
        Lettering lettering = label.lettering();
        String x = Decimals.text(label.at().xMm());
        String y = Decimals.text(label.at().yMm());
        String turn = Decimals.text(lettering.turnDegrees());
        return "<text"
                + attribute("x", x)
                + attribute("y", y)
                + attribute("font-size", Decimals.text(lettering.sizeMm()))
                + (lettering.face() == Lettering.Face.BOLD ? attribute("font-weight", "600") : "")
                + anchor(label.align())
                + (turn.equals("0")
                        ? ""
                        : attribute("transform", "rotate(" + turn + " " + x + " " + y + ")"))
                + ">"
                + SvgText.escaped(label.text())
                + "</text>\n";
    }

    private static String anchor(Align align) {
        return switch (align) {
            case START -> "";
            case MIDDLE -> attribute("text-anchor", "middle");
            case END -> attribute("text-anchor", "end");
        };
    }

    @Override
    public String window(Mark.Window window) {
        Box view = window.view();
        if (view.areaMm2() == 0) {
            return "";
        }
        return "<svg"
                + attribute("x", Decimals.text(window.at().xMm()))
                + attribute("y", Decimals.text(window.at().yMm()))
                + attribute("width", Decimals.text(view.widthMm()))
                + attribute("height", Decimals.text(view.heightMm()))
                + attribute("viewBox", box(view))
                + ">\n"
                + marks(window.drawing())
                + "</svg>\n";
    }

    private static String box(Box box) {
        return Decimals.text(box.leftMm())
                + " "
                + Decimals.text(box.topMm())
                + " "
                + Decimals.text(box.widthMm())
                + " "
                + Decimals.text(box.heightMm());
    }

    private static String attribute(String name, String value) {
        return " " + name + "=\"" + value + "\"";
    }
}
