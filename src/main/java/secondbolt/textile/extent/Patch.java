package secondbolt.textile.extent;

import java.util.List;
import secondbolt.file.value.AcrossAlong;
import secondbolt.measure.Length;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/** The place of a flaw or a feature on the cloth as measured. */
public sealed interface Patch {
    /** Its outline in millimetres; a round one is never drawn too small. */
    Outline outline();

    /** The sides of the smallest upright rectangle round it. */
    Sides<Length> bounds();

    /**
     * An upright rectangle.
     *
     * @param at its centre
     * @param size across and along, above zero
     */
    record Rectangle(AcrossAlong<Length> at, AcrossAlong<Length> size) implements Patch {
        @Override
        public Outline outline() {
            return Outline.of(box(bounds()));
        }

        @Override
        public Sides<Length> bounds() {
            return around(at, size.across().dividedBy(2), size.along().dividedBy(2));
        }
    }

    /**
     * A circle.
     *
     * @param at its centre
     * @param diameter above zero
     */
    record Round(AcrossAlong<Length> at, Length diameter) implements Patch {
        @Override
        public Outline outline() {
            return Outline.round(point(at), diameter.millimetres() / 2);
        }

        @Override
        public Sides<Length> bounds() {
            return around(at, diameter.dividedBy(2), diameter.dividedBy(2));
        }
    }

    /**
     * Drawn round by its corners.
     *
     * @param corners in order, at least three
     */
    record Drawn(List<AcrossAlong<Length>> corners) implements Patch {
        /** Copies the corners. */
        public Drawn {
            corners = List.copyOf(corners);
        }

        @Override
        public Outline outline() {
            return Patch.outline(corners);
        }

        @Override
        public Sides<Length> bounds() {
            return Patch.bounds(corners);
        }
    }

    private static Sides<Length> around(AcrossAlong<Length> at, Length across, Length along) {
        return new Sides<>(
                at.across().minus(across),
                at.across().plus(across),
                at.along().minus(along),
                at.along().plus(along));
    }

    private static Box box(Sides<Length> sides) {
        return Box.between(
                new Point(sides.left().millimetres(), sides.top().millimetres()),
                new Point(sides.right().millimetres(), sides.bottom().millimetres()));
    }

    private static Point point(AcrossAlong<Length> at) {
        return new Point(at.across().millimetres(), at.along().millimetres());
    }

    /** The outline through these corners. */
    static Outline outline(List<AcrossAlong<Length>> corners) {
        return new Outline(corners.stream().map(Patch::point).toList());
    }

    /** The sides of the smallest upright rectangle round these corners. */
    static Sides<Length> bounds(List<AcrossAlong<Length>> corners) {
        AcrossAlong<Length> first = corners.get(0);
        Sides<Length> sides =
                new Sides<>(first.across(), first.across(), first.along(), first.along());
        for (AcrossAlong<Length> corner : corners) {
            sides =
                    new Sides<>(
                            sides.left().orShorter(corner.across()),
                            sides.right().orLonger(corner.across()),
                            sides.top().orShorter(corner.along()),
                            sides.bottom().orLonger(corner.along()));
        }
        return sides;
    }
}
