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
        Tape tape) {
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

    /** The same with nothing to tick off. */
    public SheetText(
            String projectTitle,
            String sheetTitle,
            SheetCode code,
            List<String> instructions,
            List<String> warnings,
            List<List<String>> table,
            Tape tape) {
        this(projectTitle, sheetTitle, code, instructions, warnings, table, List.of(), tape);
    }

    /** Copies the lists. */
    public SheetText {
        instructions = List.copyOf(instructions);
        warnings = List.copyOf(warnings);
        items = List.copyOf(items);
        table = table.stream().map(List::copyOf).toList();
    }
}
