package secondbolt.draw.sheet;

import java.util.List;
import secondbolt.draw.SheetCode;
import secondbolt.measure.Tape;

/**
 * What stands on a sheet besides its drawing.
 *
 * @param projectTitle the project's title
 * @param sheetTitle the sheet's title
 * @param code the code of all that is printed on it
 * @param instructions what to do, in order; without numbers, which are put before them
 * @param warnings each is boxed; one that says {@code DO NOT} is bold
 * @param table rows of cells, the first row being the head; may be empty
 * @param items what is ticked off, one after the other; may be empty
 * @param parts of a sheet of words, in order; none on a sheet with a drawing
 * @param tape the maker's
 */
public record SheetText(
        String projectTitle,
        String sheetTitle,
        SheetCode code,
        List<String> instructions,
        List<String> warnings,
        List<List<String>> table,
        List<Item> items,
        List<Part> parts,
        Tape tape) {
    /** A part of a sheet of words. */
    public sealed interface Part {
        /**
         * Answers with the function for the kind of part.
         *
         * @param <R> the answer
         */
        <R> R accept(Visitor<R> visitor);

        /**
         * One answer for each kind of part.
         *
         * @param <R> the answer
         */
        interface Visitor<R> {
            /** Answers for a heading. */
            R heading(Heading heading);

            /** Answers for a paragraph. */
            R paragraph(Paragraph paragraph);

            /** Answers for what stands in a box. */
            R boxed(Boxed boxed);

            /** Answers for a list. */
            R listed(Listed listed);

            /** Answers for a table. */
            R rows(Rows rows);

            /** Answers for what is ticked off. */
            R ticks(Ticks ticks);
        }

        /**
         * A heading.
         *
         * @param text its words
         */
        record Heading(String text) implements Part {
            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.heading(this);
            }
        }

        /**
         * A paragraph.
         *
         * @param text its words
         * @param isStrong whether it leads
         */
        record Paragraph(String text, boolean isStrong) implements Part {
            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.paragraph(this);
            }
        }

        /**
         * What stands in a box, to be read first.
         *
         * @param text its words
         */
        record Boxed(String text) implements Part {
            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.boxed(this);
            }
        }

        /**
         * A list.
         *
         * @param texts in order
         * @param isNumbered whether the order matters
         */
        record Listed(List<String> texts, boolean isNumbered) implements Part {
            /** Copies the list. */
            public Listed {
                texts = List.copyOf(texts);
            }

            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.listed(this);
            }
        }

        /**
         * A table.
         *
         * @param rows of cells
         * @param hasHead whether the first row is its head
         */
        record Rows(List<List<String>> rows, boolean hasHead) implements Part {
            /** Copies the rows. */
            public Rows {
                rows = rows.stream().map(List::copyOf).toList();
            }

            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.rows(this);
            }
        }

        /**
         * What is ticked off.
         *
         * @param items in order
         */
        record Ticks(List<Item> items) implements Part {
            /** Copies the list. */
            public Ticks {
                items = List.copyOf(items);
            }

            @Override
            public <R> R accept(Visitor<R> visitor) {
                return visitor.ticks(this);
            }
        }
    }

    /**
     * Something to tick off.
     *
     * @param title what it is
     * @param notes what is said of it
     * @param rows of cells, the last ones at the right
     * @param isDone whether it is ticked already
     */
    public record Item(String title, List<String> notes, List<List<String>> rows, boolean isDone) {
        /** Copies the lists. */
        public Item {
            notes = List.copyOf(notes);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /** One with a drawing and nothing to tick off. */
    public SheetText(
            String projectTitle,
            String sheetTitle,
            SheetCode code,
            List<String> instructions,
            List<String> warnings,
            List<List<String>> table,
            Tape tape) {
        this(
                projectTitle,
                sheetTitle,
                code,
                instructions,
                warnings,
                table,
                List.of(),
                List.of(),
                tape);
    }

    /** Copies the lists. */
    public SheetText {
        instructions = List.copyOf(instructions);
        warnings = List.copyOf(warnings);
        items = List.copyOf(items);
        parts = List.copyOf(parts);
        table = table.stream().map(List::copyOf).toList();
    }
}
