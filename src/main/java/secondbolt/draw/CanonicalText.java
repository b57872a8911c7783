package secondbolt.draw;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * A drawing as plain text, the same for the same content: coordinates to a thousandth of a
 * millimetre, since machines differ in the last bit, and labels letter by letter.
 */
public final class CanonicalText implements Mark.Visitor<Void>, Path.Visitor<Void> {
    private final StringBuilder out = new StringBuilder();

    /** Where in the text a drawing seen through a window stands already; the key is the object. */
    private final IdentityHashMap<Drawing, Span> seen = new IdentityHashMap<>();

    private record Span(int from, int to) {}

    private CanonicalText() {}

    /** The text of a drawing. */
    public static String of(Drawing drawing) {
        CanonicalText text = new CanonicalText();
        text.drawing(drawing);
        return text.out.toString();
    }

    /** The texts of several drawings; what many of them show through windows is written once. */
    public static List<String> of(List<Drawing> drawings) {
        CanonicalText text = new CanonicalText();
        List<String> texts = new ArrayList<>();
        for (Drawing drawing : drawings) {
            int from = text.out.length();
            text.drawing(drawing);
            texts.add(text.out.substring(from));
        }
        return texts;
    }

    private void drawing(Drawing drawing) {
        word("drawing").quoted(drawing.title()).box(drawing.frame()).end();
        drawing.marks().forEach(mark -> mark.accept(this));
        word("end").end();
    }

    @Override
    public Void line(Mark.Line line) {
        word("line").number(line.pen().widthMm());
        line.pen().dashesMm().forEach(this::number);
        path(line.path());
        return null;
    }

    @Override
    public Void fill(Mark.Fill fill) {
        word("fill").word(fill.shade().name());
        path(fill.path());
        return null;
    }

    @Override
    public Void label(Mark.Label label) {
        Lettering lettering = label.lettering();
        word("label").point(label.at()).number(lettering.sizeMm()).word(lettering.face().name());
        number(lettering.turnDegrees()).word(label.align().name()).quoted(label.text()).end();
        return null;
    }

    @Override
    public Void window(Mark.Window window) {
        word("window").box(window.view()).point(window.at()).end();
        Span known = seen.get(window.drawing());
        if (known == null) {
            int from = out.length();
            drawing(window.drawing());
            seen.put(window.drawing(), new Span(from, out.length()));
        } else {
            out.append(out, known.from(), known.to());
        }
        return null;
    }

    private void path(Path path) {
        path.steps().forEach(step -> step.accept(this));
        end();
    }

    @Override
    public Void move(Path.Move move) {
        word("M").point(move.to());
        return null;
    }

    @Override
    public Void straight(Path.Straight straight) {
        word("L").point(straight.to());
        return null;
    }

    @Override
    public Void curve(Path.Curve curve) {
        word("C").point(curve.leave()).point(curve.arrive()).point(curve.to());
        return null;
    }

    @Override
    public Void close(Path.Close close) {
        word("Z");
        return null;
    }

    private CanonicalText box(Box box) {
        return number(box.leftMm())
                .number(box.topMm())
                .number(box.widthMm())
                .number(box.heightMm());
    }

    private CanonicalText point(Point point) {
        return number(point.xMm()).number(point.yMm());
    }

    private CanonicalText number(double number) {
        Decimals.append(out, number);
        out.append(' ');
        return this;
    }

    /** The length stands before the text, so that no text can pass for what follows it. */
    private CanonicalText quoted(String text) {
        return word(Integer.toString(text.length())).word(text);
    }

    private CanonicalText word(String word) {
        out.append(word).append(' ');
        return this;
    }

    private void end() {
        out.append('\n');
    }
}
