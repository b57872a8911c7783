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
 */
public record Sheet(
        String name,
        String title,
        Drawing drawing,
        List<String> instructions,
        List<String> warnings,
        Table table) {
    /** Copies the lists. */
    public Sheet {
        instructions = List.copyOf(instructions);
        warnings = List.copyOf(warnings);
    }
}
