package secondbolt.draw;

import java.util.ArrayList;
import java.util.List;
import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/** Gathers marks for a drawing. Not for sharing: one sketch makes one drawing. */
public final class Sketch {
    private final List<Mark> marks = new ArrayList<>();

    /** Adds a mark. */
    public Sketch add(Mark mark) {
        marks.add(mark);
        return this;
    }

    /** Draws a path. */
    public Sketch line(Path path, Pen pen) {
        return add(new Mark.Line(path, pen));
    }

    /** Draws a straight line. */
    public Sketch line(Point from, Point to, Pen pen) {
        return line(Path.line(from, to), pen);
    }

    /** Draws the sides of a box. */
    public Sketch box(Box box, Pen pen) {
        return line(Path.of(box), pen);
    }

    /** Fills a path. */
    public Sketch fill(Path path, Shade shade) {
        return add(new Mark.Fill(path, shade));
    }

    /** Writes a label that begins at a point. */
    public Sketch label(String text, Point at, Lettering lettering) {
        return add(new Mark.Label(text, at, lettering, Align.START));
    }

    /** Writes a label. */
    public Sketch label(String text, Point at, Lettering lettering, Align align) {
        return add(new Mark.Label(text, at, lettering, align));
    }

    /** The drawing of all that was gathered. */
    public Drawing drawing(String title, Box frame) {
        return new Drawing(title, frame, marks);
    }
}
