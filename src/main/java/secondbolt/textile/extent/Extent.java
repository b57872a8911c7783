package secondbolt.textile.extent;

import java.util.List;
import java.util.Optional;
import secondbolt.file.value.AcrossAlong;
import secondbolt.measure.Area;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;
import secondbolt.shape.Region;

/** How large a cloth is as the maker measured it, before anything is trimmed or washed. */
public sealed interface Extent {
    /** Its outline, in millimetres from the left edge and the top. */
    Outline outline();

    /** The sides of the smallest upright rectangle round it. */
    Sides<Length> bounds();

    /** What it covers, exactly where it has straight, upright sides. */
    Area area();

    /** What is left once the trim is cut away, where it lay. */
    Region trimmed(Sides<Length> trim);

    /** Across and along once the trim is cut away; along is the shorter side of a slanted cloth. */
    AcrossAlong<Length> trimmedSize(Sides<Length> trim);

    /** Across and along in all, along by the longer side. */
    default AcrossAlong<Length> size() {
        Sides<Length> bounds = bounds();
        return new AcrossAlong<>(
                bounds.right().minus(bounds.left()), bounds.bottom().minus(bounds.top()));
    }

    /** How far from square it is, if its sides were measured one by one. */
    default Optional<Squareness> squareness() {
        return Optional.empty();
    }

    /**
     * The sides and a diagonal, measured one by one.
     *
     * @param left the left side
     * @param right the right side
     * @param diagonal from the top left corner to the bottom right one
     */
    record Measured(Optional<Length> left, Optional<Length> right, Optional<Length> diagonal) {}

    /**
     * A cloth with four sides: a straight top, upright sides, and a bottom that slants if they are
     * not equally long.
     *
     * @param written across and along
     * @param sides the sides measured one by one, if they were
     */
    record FourSided(AcrossAlong<Length> written, Optional<Measured> sides) implements Extent {
        /** The left side; as written along if it was not measured by itself. */
        public Length left() {
            return sides.flatMap(Measured::left).orElse(written.along());
        }

        /** The right side; as written along if it was not measured by itself. */
        public Length right() {
            return sides.flatMap(Measured::right).orElse(written.along());
        }

        @Override
        public Optional<Squareness> squareness() {
            return sides.map(s -> Squareness.of(written.across(), left(), right(), s.diagonal()));
        }

        @Override
        public Outline outline() {
            double across = written.across().millimetres();
            return new Outline(
                    List.of(
                            Point.ORIGIN,
                            new Point(across, 0),
                            new Point(across, right().millimetres()),
                            new Point(0, left().millimetres())));
        }

        @Override
        public Sides<Length> bounds() {
            return new Sides<>(
                    Length.ZERO, written.across(), Length.ZERO, left().orLonger(right()));
        }

        @Override
        public Area area() {
            return written.across().times(left().plus(right()).dividedBy(2));
        }

        /** How long it is at so much across. */
        private Length along(Length across) {
            Share share = Share.left(across, written.across());
            return left().plus(right().minus(left()).times(share));
        }

        @Override
        public Region trimmed(Sides<Length> trim) {
            Length from = trim.left();
            Length to = written.across().minus(trim.right());
            double top = trim.top().millimetres();
            double endLeft = along(from).minus(trim.bottom()).millimetres();
            double endRight = along(to).minus(trim.bottom()).millimetres();
            if (!to.isLongerThan(from) || endLeft <= top || endRight <= top) {
                return Region.EMPTY;
            }
            return Region.of(
                    new Outline(
                            List.of(
                                    new Point(from.millimetres(), top),
                                    new Point(to.millimetres(), top),
                                    new Point(to.millimetres(), endRight),
                                    new Point(from.millimetres(), endLeft))));
        }

        @Override
        public AcrossAlong<Length> trimmedSize(Sides<Length> trim) {
            Length to = written.across().minus(trim.right());
            Length shorter = along(trim.left()).orShorter(along(to));
            return new AcrossAlong<>(
                    to.minus(trim.left()), shorter.minus(trim.top()).minus(trim.bottom()));
        }
    }

    /**
     * An irregular cloth.
     *
     * @param corners in order, each across from the left edge and along from the top
     */
    record Irregular(List<AcrossAlong<Length>> corners) implements Extent {
        /** Copies the corners. */
        public Irregular {
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

        @Override
        public Area area() {
            return Area.ofComputedSquareMillimetres(outline().areaMm2());
        }

        @Override
        public Region trimmed(Sides<Length> trim) {
            AcrossAlong<Length> left = trimmedSize(trim);
            if (!left.across().isPositive() || !left.along().isPositive()) {
                return Region.EMPTY;
            }
            // Cut straight, so far in from the farthest point of each side.
            Box kept =
                    new Box(
                            bounds().left().plus(trim.left()).millimetres(),
                            bounds().top().plus(trim.top()).millimetres(),
                            left.across().millimetres(),
                            left.along().millimetres());
            return Region.of(outline()).intersection(Region.of(kept));
        }

        @Override
        public AcrossAlong<Length> trimmedSize(Sides<Length> trim) {
            return new AcrossAlong<>(
                    size().across().minus(trim.left()).minus(trim.right()),
                    size().along().minus(trim.top()).minus(trim.bottom()));
        }
    }
}
