package secondbolt.supply;

import java.util.ArrayList;
import java.util.List;
import secondbolt.block.Block;
import secondbolt.block.Fact;
import secondbolt.block.Table;
import secondbolt.measure.Plural;
import secondbolt.supply.cost.Cost;
import secondbolt.supply.plan.Currency;

/**
 * What the page says of the cost.
 *
 * @param cost of what is bought
 */
record CostBlocks(Cost cost) {
    /** None if nothing is priced. */
    List<Block> blocks() {
        if (cost.lines().isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Cost"));
        blocks.add(new Block.Rows(table()));
        List<Fact> facts = new ArrayList<>();
        String without = cost.unpriced().isEmpty() ? "" : ", not all";
        facts.add(Fact.of("At the shop" + without, cost.currency().print(cost.paid())));
        if (cost.isShared()) {
            facts.add(Fact.of("Of it this project's", cost.currency().print(cost.own())));
        }
        blocks.add(new Block.Facts(facts));
        if (!cost.unpriced().isEmpty()) {
            blocks.add(
                    new Block.Prose(
                            "Without a price, and so not in the sum: "
                                    + String.join(", ", cost.unpriced())
                                    + "."));
        }
        return blocks;
    }

    private Table table() {
        Currency money = cost.currency();
        List<String> head = new ArrayList<>(List.of("Thing", "Price", "Times", "Paid"));
        if (cost.isShared()) {
            head.addAll(List.of("Shared by", "This project's"));
        }
        List<List<Table.Cell>> rows = new ArrayList<>();
        for (Cost.Line line : cost.lines()) {
            List<String> row =
                    new ArrayList<>(
                            List.of(
                                    line.item(),
                                    money.printPrice(line.price()),
                                    line.times().stripTrailingZeros().toPlainString(),
                                    money.print(line.paid())));
            if (cost.isShared()) {
                row.add(line.serves() > 1 ? Plural.of(line.serves(), "project") : "");
                row.add(money.print(line.own()));
            }
            rows.add(row.stream().map(Table.Cell::of).toList());
        }
        return new Table("Cost", "", head, rows);
    }
}
