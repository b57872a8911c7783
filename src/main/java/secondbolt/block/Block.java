package secondbolt.block;

import java.util.List;
import secondbolt.draw.Drawing;

/**
 * One part of what a page or a sheet says. In its text, words between backticks are what the maker
 * types.
 */
public sealed interface Block {
    /** Answers with the function for the kind of block. */
    <R> R accept(Visitor<R> visitor);

    /** One answer for each kind of block. */
    interface Visitor<R> {
        /** Answers for a heading. */
        R heading(Heading heading);

        /** Answers for a verdict. */
        R verdict(Verdict verdict);

        /** Answers for prose. */
        R prose(Prose prose);

        /** Answers for facts. */
        R facts(Facts facts);

        /** Answers for a table. */
        R rows(Rows rows);

        /** Answers for a picture. */
        R picture(Picture picture);

        /** Answers for steps. */
        R steps(Steps steps);

        /** Answers for points. */
        R points(Points points);

        /** Answers for warnings. */
        R warnings(Warnings warnings);

        /** Answers for what is ticked off. */
        R ticks(Ticks ticks);
    }

    /**
     * A heading below the topic's own.
     *
     * @param text its words
     */
    record Heading(String text) implements Block {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.heading(this);
        }
    }

    /**
     * What it comes to, in a sentence that leads.
     *
     * @param text the sentence
     * @param isGood whether it is what the maker hopes for
     */
    record Verdict(String text, boolean isGood) implements Block {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.verdict(this);
        }
    }

    /**
     * A paragraph.
     *
     * @param text its words
     */
    record Prose(String text) implements Block {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.prose(this);
        }
    }

    /**
     * Facts, one below the other.
     *
     * @param facts in order
     */
    record Facts(List<Fact> facts) implements Block {
        /** Copies the facts. */
        public Facts {
            facts = List.copyOf(facts);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.facts(this);
        }
    }

    /**
     * A table.
     *
     * @param table what is in it
     */
    record Rows(Table table) implements Block {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.rows(this);
        }
    }

    /**
     * A picture.
     *
     * @param drawing what it shows
     * @param caption what stands below it
     */
    record Picture(Drawing drawing, String caption) implements Block {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.picture(this);
        }
    }

    /**
     * What to do, in order.
     *
     * @param steps a sentence or two each
     */
    record Steps(List<String> steps) implements Block {
        /** Copies the steps. */
        public Steps {
            steps = List.copyOf(steps);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.steps(this);
        }
    }

    /**
     * Things of one kind in no order of doing.
     *
     * @param points a sentence or two each
     */
    record Points(List<String> points) implements Block {
        /** Copies the points. */
        public Points {
            points = List.copyOf(points);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.points(this);
        }
    }

    /**
     * What must be read before a sheet is used.
     *
     * @param warnings a sentence or two each
     */
    record Warnings(List<String> warnings) implements Block {
        /** Copies the warnings. */
        public Warnings {
            warnings = List.copyOf(warnings);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.warnings(this);
        }
    }

    /**
     * Things to tick off, in order.
     *
     * @param items in order
     */
    record Ticks(List<Item> items) implements Block {
        /** Copies the items. */
        public Ticks {
            items = List.copyOf(items);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.ticks(this);
        }

        /**
         * Something to tick off.
         *
         * @param title what it is
         * @param notes what is said of it
         * @param rows of cells, all equally many
         * @param isDone whether it is ticked already
         */
        public record Item(
                String title, List<String> notes, List<List<String>> rows, boolean isDone) {
            /** Copies the lists. */
            public Item {
                notes = List.copyOf(notes);
                rows = rows.stream().map(List::copyOf).toList();
            }

            /** Still to be done. */
            public static Item open(String title, List<String> notes, List<List<String>> rows) {
                return new Item(title, notes, rows, false);
            }

            /** Done, with nothing left to measure. */
            public static Item done(String title, List<String> notes) {
                return new Item(title, notes, List.of(), true);
            }
        }
    }
}
