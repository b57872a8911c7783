package secondbolt.figure;

import java.util.List;
import java.util.Optional;
import secondbolt.measure.Area;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;
import secondbolt.measure.Mass;
import secondbolt.shape.Point;

/** One value, or several, of one kind. */
public sealed interface Figure {
    /** Answers with the function for the kind of figure. */
    <R> R accept(Visitor<R> visitor);

    /** What its key ends in, so that a reader knows the unit: {@code _mm}; empty if it has none. */
    default String ending() {
        return "";
    }

    /** One answer for each kind of figure. */
    interface Visitor<R> {
        /** Answers for text. */
        R text(Text text);

        /** Answers for a number without a unit. */
        R number(Amount number);

        /** Answers for a claim. */
        R claim(Claim claim);

        /** Answers for a length. */
        R size(Size size);

        /** Answers for an area. */
        R surface(Surface surface);

        /** Answers for a mass. */
        R heft(Heft heft);

        /** Answers for the weight of a cloth. */
        R clothWeight(Weight weight);

        /** Answers for a place or a size. */
        R place(Place place);

        /** Answers for a row of places. */
        R line(Line line);

        /** Answers for a row of lengths. */
        R sizes(Sizes sizes);

        /** Answers for figures inside. */
        R group(Group group);

        /** Answers for a list of figures. */
        R items(Items items);
    }

    /**
     * Text.
     *
     * @param value empty if it is open
     */
    record Text(Optional<String> value) implements Figure {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.text(this);
        }
    }

    /**
     * A number.
     *
     * @param value empty if it is open; a whole number is a count
     * @param ending what its key ends in, such as {@code _percent}; empty if nothing
     */
    record Amount(Optional<Double> value, String ending) implements Figure {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.number(this);
        }
    }

    /**
     * Something that is so or is not.
     *
     * @param holds whether it is so
     */
    record Claim(boolean holds) implements Figure {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.claim(this);
        }
    }

    /**
     * A length.
     *
     * @param value empty if it is open
     */
    record Size(Optional<Length> value) implements Figure {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.size(this);
        }

        @Override
        public String ending() {
            return "_mm";
        }
    }

    /**
     * An area.
     *
     * @param value empty if it is open
     */
    record Surface(Optional<Area> value) implements Figure {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.surface(this);
        }

        @Override
        public String ending() {
            return "_mm2";
        }
    }

    /**
     * A mass.
     *
     * @param value empty if it is open
     */
    record Heft(Optional<Mass> value) implements Figure {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.heft(this);
        }

        @Override
        public String ending() {
            return "_g";
        }
    }

    /**
     * The weight of a cloth.
     *
     * @param value empty if it is open
     */
    record Weight(Optional<ClothWeight> value) implements Figure {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.clothWeight(this);
        }

        @Override
        public String ending() {
            return "_g_per_m2";
        }
    }

    /**
     * A place or a size, across and along.
     *
     * @param value empty if it is open
     */
    record Place(Optional<Point> value) implements Figure {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.place(this);
        }

        @Override
        public String ending() {
            return "_mm";
        }
    }

    /**
     * Places in order, such as the corners of an outline.
     *
     * @param points in order
     */
    record Line(List<Point> points) implements Figure {
        /** Copies the points. */
        public Line {
            points = List.copyOf(points);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.line(this);
        }

        @Override
        public String ending() {
            return "_mm";
        }
    }

    /**
     * Lengths in order.
     *
     * @param lengths in order
     */
    record Sizes(List<Length> lengths) implements Figure {
        /** Copies the lengths. */
        public Sizes {
            lengths = List.copyOf(lengths);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.sizes(this);
        }

        @Override
        public String ending() {
            return "_mm";
        }
    }

    /**
     * Figures inside.
     *
     * @param figures empty if they are open
     * @param ending what its key ends in where all inside share a unit; empty if nothing
     */
    record Group(Optional<Figures> figures, String ending) implements Figure {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.group(this);
        }
    }

    /**
     * A list of figures.
     *
     * @param items in order
     */
    record Items(List<Figures> items) implements Figure {
        /** Copies the items. */
        public Items {
            items = List.copyOf(items);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.items(this);
        }
    }
}
