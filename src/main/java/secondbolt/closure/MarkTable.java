package secondbolt.closure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import secondbolt.block.Both;
import secondbolt.block.Table;
import secondbolt.closure.row.ClosureResult;
import secondbolt.closure.row.FastenerMark;
import secondbolt.measure.Length;
import secondbolt.worksheet.Sentence;

/**
 * The marks of a closure in rows, for its page and its strips.
 *
 * @param result the closure
 */
record MarkTable(ClosureResult result) {
    /** As a page shows it. */
    Table onPage() {
        String name = result.name();
        return new Table(
                "Marks of " + name,
                "Each " + one() + (hasHoles() ? " and its hole, " : ", ") + name,
                head("Hole begins", List.of(), "Note"),
                rows());
    }

    /** As a sheet prints it: the other tape in a column of its own. */
    Table onSheet() {
        String from = result.closure().isUpright() ? " from the top" : " from the centre";
        return Table.of(
                head("Hole begins" + from, List.of(""), ""),
                rows().stream().map(MarkTable::flat).toList());
    }

    private List<String> head(String begins, List<String> otherTape, String note) {
        List<String> head = new ArrayList<>(List.of(Sentence.capital(one()), "From the top"));
        head.addAll(otherTape);
        if (hasHoles()) {
            head.addAll(List.of(begins, "Hole ends"));
        }
        head.add(note);
        return head;
    }

    private static List<String> flat(List<Table.Cell> row) {
        Both fromTop = row.get(1).value();
        return Stream.concat(
                        Stream.of(row.get(0).value().own(), fromTop.own(), fromTop.other()),
                        row.subList(2, row.size()).stream().map(cell -> cell.value().own()))
                .toList();
    }

    private List<List<Table.Cell>> rows() {
        return result.marks().stream().map(this::row).toList();
    }

    private List<Table.Cell> row(FastenerMark mark) {
        List<Table.Cell> cells = new ArrayList<>();
        cells.add(Table.Cell.of(Integer.toString(mark.number())));
        cells.add(Table.Cell.of(result.tape(), mark.fromTop()));
        if (hasHoles()) {
            cells.add(Table.Cell.of(place(mark.start())));
            cells.add(Table.Cell.of(place(mark.end())));
        }
        cells.add(Table.Cell.of(note(mark)));
        return cells;
    }

    /**
     * A place outside what it is counted from is told by a word, which is sooner seen than a sign.
     */
    private String place(Length from) {
        return result.tape().print(from.size()) + side(from);
    }

    /** A level hole is counted from the centre line both ways, an upright one from the top. */
    private String side(Length from) {
        if (result.closure().isUpright()) {
            return from.isNegative() ? " outside" : "";
        }
        return from.isNegative() ? " outside" : " inside";
    }

    private String note(FastenerMark mark) {
        List<String> note = new ArrayList<>();
        mark.why().ifPresent(note::add);
        if (mark.holes() != result.closure().fastening().holes()) {
            note.add(mark.holes().word());
        }
        if (mark.byHand()) {
            note.add("work by hand");
        }
        return String.join(", ", note);
    }

    private String one() {
        return result.closure().fastening().kind().one();
    }

    private boolean hasHoles() {
        return result.closure().fastening().hasHoles();
    }
}
