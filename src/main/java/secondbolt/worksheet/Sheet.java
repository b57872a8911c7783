package secondbolt.worksheet;

import java.util.List;
import secondbolt.draw.Drawing;

/**
 * A sheet that is printed true to scale.
 *
 * @param name lower-case words with hyphens; it names the file and is what the maker asks for
 * @param title its heading
 * @param drawing in millimetres of true size
 * @param instructions what to do with it, in order
 * @param warnings what must be read before it is used
 * @param table the values it shows
 * @param size what it is printed on unless the maker asks for other paper
 */
public record Sheet(
        String name,
        String title,
        Drawing drawing,
        List<String> instructions,
        List<String> warnings,
        Table table,
        Size size) {
    /** What a sheet is printed on. */
    public enum Size {
        /** The maker's own paper, in tiles if it must be. */
        HOME,
        /** One large page from a plotter. */
        LARGE
    }

    /** Copies the lists. */
    public Sheet {
        instructions = List.copyOf(instructions);
        warnings = List.copyOf(warnings);
    }

    /** A sheet for the maker's own paper. */
    public Sheet(
            String name,
            String title,
            Drawing drawing,
            List<String> instructions,
            List<String> warnings,
            Table table) {
        this(name, title, drawing, instructions, warnings, table, Size.HOME);
    }
}
