package secondbolt.project;

import java.util.List;
import secondbolt.worksheet.Worksheet;

/**
 * A project worked out.
 *
 * @param folder the name of its folder, which names its pages
 * @param heading what it says of itself
 * @param worksheets in the order of working
 */
public record Workings(String folder, Heading heading, List<Worksheet> worksheets) {
    /** Copies the worksheets. */
    public Workings {
        worksheets = List.copyOf(worksheets);
    }
}
