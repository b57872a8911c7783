package secondbolt.cloth;

import java.util.List;
import java.util.stream.Stream;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.cloth.yields.ClothStock;
import secondbolt.figure.Figures;
import secondbolt.garment.Role;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Notes;
import secondbolt.worksheet.Worksheet;

/**
 * The cloths of a project on a page.
 *
 * @param results each cloth worked out, in the maker's order
 * @param tape to print with
 */
record ClothWorksheet(List<ClothResult> results, Tape tape) {
    Worksheet worksheet() {
        List<ClothStock> stocks = ClothStock.of(results);
        return Worksheet.of("cloth", "The cloth", this::notes)
                .showing(() -> new ClothPage(tape).blocks(results, stocks))
                .telling(() -> figures(stocks));
    }

    private Notes notes() {
        return new Notes(
                results.stream().flatMap(r -> ClothFindings.of(r, tape).stream()).toList(),
                Stream.concat(
                                results.stream().flatMap(r -> ClothGaps.assumed(r, tape).stream()),
                                ClothGaps.assumedOfBolts(results, tape).stream())
                        .toList(),
                results.stream().flatMap(r -> ClothGaps.open(r, tape).stream()).toList());
    }

    private Figures figures(List<ClothStock> stocks) {
        Figures figures = new Figures();
        for (ClothResult result : results) {
            Role role = result.cloth().textile().roleOrMain();
            stocks.stream()
                    .filter(stock -> stock.role() == role)
                    .forEach(s -> figures.inside(result.name(), ClothFigures.of(result, s)));
        }
        return figures;
    }
}
