package secondbolt.sewing;

import java.util.ArrayList;
import java.util.List;
import secondbolt.block.Table;
import secondbolt.block.Table.Cell;
import secondbolt.sewing.advice.NeedleRow;
import secondbolt.sewing.advice.SewnCloth;

/**
 * Which needle goes through each cloth, both charts side by side.
 *
 * @param cloths that are sewn
 */
record NeedleTable(List<SewnCloth> cloths) {
    Table table() {
        List<List<Cell>> rows = new ArrayList<>();
        for (SewnCloth cloth : cloths) {
            List<NeedleRow> of = NeedleRow.of(cloth);
            for (int i = 0; i < of.size(); i++) {
                List<Cell> row = new ArrayList<>();
                if (i == 0) {
                    row.add(Cell.of(cloth.name()).over(of.size()));
                }
                row.addAll(cells(of.get(i)));
                rows.add(row);
            }
        }
        if (cloths.isEmpty()) {
            for (NeedleRow any : NeedleRow.values()) {
                List<Cell> row = new ArrayList<>(List.of(Cell.of("any")));
                row.addAll(cells(any));
                rows.add(row);
            }
        }
        return new Table(
                "Needle sizes for each cloth, by two charts",
                "Metric sizes: a hundredth of a millimetre of the shaft each. Where two rows or two"
                        + " charts differ, begin with the finer and try it on a scrap: skipped"
                        + " stitches ask for a thicker one. A new needle after 8 to 12 hours.",
                List.of("Cloth", "As", "A machine manual", "Needle charts"),
                rows);
    }

    private static List<Cell> cells(NeedleRow row) {
        return List.of(
                Cell.of(row.cloth()),
                Cell.of(row.manual().isEmpty() ? "not told" : row.manual()),
                Cell.of(row.chart()));
    }
}
