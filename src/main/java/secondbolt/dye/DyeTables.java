package secondbolt.dye;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Table;
import secondbolt.block.Table.Cell;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.bath.Load;
import secondbolt.dye.guide.DyePrint;
import secondbolt.dye.recipe.Recipe;
import secondbolt.dye.recipe.RecipeLine;
import secondbolt.dye.take.ClothUptake;
import secondbolt.dye.take.Uptake;
import secondbolt.measure.Mass;
import secondbolt.measure.Tape;
import secondbolt.textile.fibre.FibreKind;

/**
 * The tables of a colour.
 *
 * @param print puts amounts into words
 */
record DyeTables(DyePrint print) {
    /** More baths have a table of their own, and each takes its share of all. */
    private static final int MOST_COLUMNS = 3;

    /** What the class does on each fibre of each cloth. */
    Block takes(DyeBatch batch) {
        List<List<Cell>> rows = new ArrayList<>();
        batch.cloths()
                .forEach(
                        cloth ->
                                cloth.uptake()
                                        .ifPresent(
                                                uptake -> rows.addAll(rows(cloth.name(), uptake))));
        return new Block.Rows(
                new Table(
                        "Which fibres take the dye",
                        "",
                        List.of("Cloth", "Fibre", "Share", "The dye", "Source"),
                        rows));
    }

    private static List<List<Cell>> rows(String cloth, ClothUptake uptake) {
        List<List<Cell>> rows = new ArrayList<>();
        for (FibreKind kind : uptake.byFibre().keySet()) {
            Uptake one = uptake.byFibre().get(kind);
            String share = uptake.fibre().shares().get(kind).percent(1);
            rows.add(
                    Stream.of(cloth, kind.word(), share, one.told(), one.source())
                            .map(Cell::of)
                            .toList());
        }
        return rows;
    }

    /** What goes in: each published figure in a row of its own. */
    Block recipe(DyeBatch batch, Recipe recipe, boolean isOnPaper) {
        List<Load> loads = batch.bathing().loads();
        boolean hasColumns = loads.size() > 1 && loads.size() <= MOST_COLUMNS;
        List<String> head = new ArrayList<>(List.of("What", "By", "How much", "In all"));
        if (hasColumns) {
            IntStream.rangeClosed(1, loads.size()).forEach(i -> head.add("Bath " + i));
        }
        List<List<Cell>> rows = new ArrayList<>();
        for (RecipeLine line : recipe.lines()) {
            List<Cell> row = new ArrayList<>();
            row.add(Cell.of(line.what().word()));
            row.add(Cell.of(line.source()));
            row.add(Cell.of(line.rate()));
            row.add(Cell.of(shown(print.all(batch, line), isOnPaper)));
            if (hasColumns) {
                loads.forEach(
                        load -> row.add(Cell.of(shown(print.one(batch, line, load), isOnPaper))));
            }
            rows.add(row);
        }
        String name = isOnPaper ? "" : "What goes into the bath of " + batch.plan().name();
        return new Block.Rows(new Table(name, "", head, rows));
    }

    /** Scales for dye show grams: on paper, which has one tape alone, they stand beside ounces. */
    private Both shown(Both amount, boolean isOnPaper) {
        boolean isDoubled = isOnPaper && print.tape() == Tape.INCH && !amount.other().isEmpty();
        return isDoubled ? Both.words(amount.own() + " (" + amount.other() + ")") : amount;
    }

    /** One bath a row. */
    Block baths(DyeBatch batch, boolean isOnPaper) {
        List<Load> loads = batch.bathing().loads();
        Mass all = batch.bathing().takes().orElse(Mass.ZERO);
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < loads.size(); i++) {
            Load load = loads.get(i);
            rows.add(
                    List.of(
                            Cell.of(Integer.toString(i + 1)),
                            Cell.of(load.words()),
                            Cell.of(Both.of(print.tape(), load.dry())),
                            Cell.of(Both.of(print.tape(), t -> t.print(load.bath()))),
                            Cell.of(all.isPositive() ? load.takes().of(all).percent(1) : "none")));
        }
        return new Block.Rows(
                new Table(
                        isOnPaper ? "" : "Baths of " + batch.plan().name(),
                        "",
                        List.of("Bath", "What goes in", "Dry", "Bath", "Part of the stock"),
                        rows));
    }
}
