package secondbolt.worksheet;

import java.util.List;
import secondbolt.draw.Drawing;

/**
 * A sheet that is printed true to scale.
 *
 * @param name lower-case words with hyphens; it names the file and is what the maker asks for
 * @param title its heading
 * @param drawing in millimetres of true size; of a picture, as large as it is printed
 * @param instructions what to do with it, in order
 * @param warnings what must be read before it is used
 * @param table the values it shows
 * @param checklist what is ticked off, in order
 * @param size what it is printed on unless the maker asks for other paper
 */
public record Sheet(
        String name,
        String title,
        Drawing drawing,
        List<String> instructions,
        List<String> warnings,
        Table table,
        List<Item> checklist,
        Size size) {
    /**
     * Something to tick off.
     *
     * @param title what it is
     * @param notes what is said of it
     * @param rows of cells, all equally many
     */
    public record Item(String title, List<String> notes, List<List<String>> rows) {
        /** Copies the lists. */
        public Item {
            notes = List.copyOf(notes);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /** What a sheet is printed on. */
    public enum Size {
        /** The maker's own paper, in tiles if it must be. */
        HOME,
        /** One large page from a plotter. */
        LARGE,
        /** The maker's own paper, one page if it has room: a picture that is not true to size. */
        PICTURE
    }

    /** Copies the lists. */
    public Sheet {
        instructions = List.copyOf(instructions);
        warnings = List.copyOf(warnings);
        checklist = List.copyOf(checklist);
    }

    /** A sheet with a table, printed on paper of a size. */
    public Sheet(
            String name,
            String title,
            Drawing drawing,
            List<String> instructions,
            List<String> warnings,
            Table table,
            Size size) {
        this(name, title, drawing, instructions, warnings, table, List.of(), size);
    }

    /** A sheet for the maker's own paper. */
    public Sheet(
            String name,
            String title,
            Drawing drawing,
            List<String> instructions,
            List<String> warnings,
            Table table) {
        this(name, title, drawing, instructions, warnings, table, List.of(), Size.HOME);
    }
}
