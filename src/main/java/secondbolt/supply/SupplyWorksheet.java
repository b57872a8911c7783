package secondbolt.supply;

import java.util.List;
import java.util.Optional;
import secondbolt.lay.design.LayResult;
import secondbolt.measure.Tape;
import secondbolt.supply.left.LeftOver;
import secondbolt.worksheet.Gives;
import secondbolt.worksheet.Once;
import secondbolt.worksheet.Worksheet;

/**
 * The supplies of a project, to be shown.
 *
 * @param result what is bought, its cost, the hours
 * @param lay the designs laid, if there is cloth to lay them on
 * @param tape to print with
 */
record SupplyWorksheet(SupplyResult result, Optional<LayResult> lay, Tape tape) {
    Worksheet worksheet() {
        Once<Optional<LeftOver>> left =
                new Once<>(() -> lay.map(found -> LeftOver.of(found.made(), tape)));
        return Worksheet.of(
                        "supply",
                        "What to buy, and what is left",
                        () -> SupplyNotes.of(result, tape))
                .showing(() -> new SupplyPage(result, lay, left.get(), tape).blocks())
                .printing(() -> new ShoppingSheet(result, tape).sheets())
                .telling(() -> SupplyFigures.of(result, left.get()))
                .giving(new Gives(BuySteps.of(result.shopping()), List.of(), List.of()));
    }
}
