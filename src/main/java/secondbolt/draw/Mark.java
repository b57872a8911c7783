package secondbolt.draw;

import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/** One thing drawn, in millimetres of true size; later marks lie over earlier ones. */
public sealed interface Mark {
    /** Answers with the function for the kind of mark. */
    <R> R accept(Visitor<R> visitor);

    /** One answer for each kind of mark. */
    interface Visitor<R> {
        /** Answers for a line. */
        R line(Line line);

        /** Answers for a filled shape. */
        R fill(Fill fill);

        /** Answers for a label. */
        R label(Label label);

        /** Answers for a window. */
        R window(Window window);
    }

    /**
     * A drawn line.
     *
     * @param path where it runs
     * @param pen how it looks
     */
    record Line(Path path, Pen pen) implements Mark {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.line(this);
        }
    }

    /**
     * A filled shape without a line round it.
     *
     * @param path its outline, closed
     * @param shade how dark
     */
    record Fill(Path path, Shade shade) implements Mark {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.fill(this);
        }
    }

    /**
     * A line of text.
     *
     * @param text in any language
     * @param at the point on the base line that {@code align} names
     * @param lettering its size, face and turn
     * @param align which part of the text stands at the point
     */
    record Label(String text, Point at, Lettering lettering, Align align) implements Mark {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.label(this);
        }
    }

    /**
     * A part of another drawing, clipped, at the same scale.
     *
     * @param drawing the other drawing
     * @param view the part of it that is seen, in its own millimetres
     * @param at where the left top corner of that part comes to lie
     */
    record Window(Drawing drawing, Box view, Point at) implements Mark {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.window(this);
        }
    }
}
