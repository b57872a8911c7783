package secondbolt.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import secondbolt.block.Block;
import secondbolt.block.Table;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.lay.design.DesignLay;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.design.Remnants;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Tape;

/**
 * What the cloth could become, one design and one pair of designs beside the other.
 *
 * @param result the designs
 * @param tape to print with
 */
record DesignRows(LayResult result, Tape tape) {
    /** As the page shows them; nothing if there is only one design. */
    List<Block> blocks() {
        return result.others().isEmpty()
                ? List.of()
                : List.of(new Block.Heading("What it could become"), new Block.Rows(table()));
    }

    private Table table() {
        Optional<String> saved = NewClothInstead.of(result.plan(), tape).heading();
        List<String> head =
                new ArrayList<>(
                        List.of("Design", "Fits", "Cloth used", "Largest remnant", "Weight"));
        saved.ifPresent(head::add);
        List<List<String>> rows = new ArrayList<>();
        result.designs().forEach(design -> rows.add(design(design)));
        result.together().forEach(both -> rows.add(both(both)));
        return new Table(
                "Designs",
                "The chosen design first; the others were tried quickly",
                head,
                rows.stream()
                        .map(row -> row.subList(0, head.size()))
                        .map(row -> row.stream().map(Table.Cell::of).toList())
                        .toList());
    }

    private List<String> design(DesignLay design) {
        List<ClothResult> cloths =
                design.stocks().stream()
                        .filter(stock -> !stock.role().isBetween())
                        .flatMap(stock -> stock.cloths().stream())
                        .toList();
        NewClothInstead instead = NewClothInstead.of(result.plan(), tape);
        List<String> row = row(design.name(), design.stocks(), design.remnants(), design.crossed());
        row.add(new LayWords(tape).suits(design.design(), cloths));
        row.add(instead.cell(design));
        return row;
    }

    private List<String> both(LayResult.DesignPair both) {
        String name = both.first() + " and " + both.second();
        List<String> row =
                both.stocks().isEmpty()
                        ? new ArrayList<>(List.of(name, "no: more than all sound cloth", "", ""))
                        : row(name, both.stocks(), both.remnants(), List.of());
        row.addAll(List.of("", ""));
        return row;
    }

    private List<String> row(
            String name, List<StockLay> stocks, Remnants remnants, List<String> crossed) {
        LayWords words = new LayWords(tape);
        List<String> used = new ArrayList<>();
        List<String> over = new ArrayList<>();
        for (StockLay stock : stocks) {
            String of = stocks.size() > 1 ? stock.role() + " " : "";
            used.add(of + LayWords.percent(stock.usedShare()));
            over.add(of + remnants.largest(stock).map(words::size).orElse("nothing"));
        }
        List<LayPiece> out = stocks.stream().flatMap(s -> s.leftOver().stream()).toList();
        List<String> missing = new ArrayList<>(crossed);
        missing.addAll(LayWords.counted(out));
        String lacks =
                stocks.stream()
                        .flatMap(stock -> words.tooLarge(stock).stream())
                        .map(lack -> "; " + lack)
                        .collect(Collectors.joining());
        return new ArrayList<>(
                List.of(
                        name,
                        missing.isEmpty() ? "yes" : "no: " + String.join(", ", missing) + lacks,
                        String.join(", ", used),
                        String.join(", ", over)));
    }
}
