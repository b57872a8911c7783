package secondbolt.worksheet;

import java.util.List;

/**
 * A table of text.
 *
 * @param head the heading of each column
 * @param rows each as long as the head
 */
public record Table(List<String> head, List<List<String>> rows) {
    /** Copies the rows and checks their length. */
    public Table {
        head = List.copyOf(head);
        rows = rows.stream().map(List::copyOf).toList();
        int columns = head.size();
        if (rows.stream().anyMatch(row -> row.size() != columns)) {
            throw new IllegalArgumentException("every row needs " + columns + " cells");
        }
    }
}
