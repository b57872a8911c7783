package secondbolt.draw.paper;

import java.util.List;
import secondbolt.draw.SheetCode;
import secondbolt.measure.Tape;

/**
 * What stands on a sheet besides its drawing.
 *
 * @param projectTitle the project's title
 * @param sheetTitle the sheet's title
 * @param code the code of its drawing
 * @param instructions what to do, in order; without numbers, which are put before them
 * @param warnings each is boxed; one that says {@code DO NOT} is bold
 * @param table rows of cells, the first row being the head; may be empty
 * @param tape the maker's
 */
public record SheetText(
        String projectTitle,
        String sheetTitle,
        SheetCode code,
        List<String> instructions,
        List<String> warnings,
        List<List<String>> table,
        Tape tape) {
    /** Copies the lists. */
    public SheetText {
        instructions = List.copyOf(instructions);
        warnings = List.copyOf(warnings);
        table = table.stream().map(List::copyOf).toList();
    }
}
