package secondbolt.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.block.Block;
import secondbolt.block.Fact;
import secondbolt.block.Table;
import secondbolt.lay.design.LayResult;
import secondbolt.measure.Tape;
import secondbolt.supply.left.LeftOver;
import secondbolt.supply.list.Purchase;

/**
 * The page of the supplies.
 *
 * @param result what is bought, its cost, the hours
 * @param lay the designs laid, if there is cloth to lay them on
 * @param left what stays over of the chosen one's cloth
 * @param tape to print with
 */
record SupplyPage(
        SupplyResult result, Optional<LayResult> lay, Optional<LeftOver> left, Tape tape) {
    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        List<Purchase> all = result.shopping().purchases();
        things(blocks, "Buy now", all.stream().filter(p -> p.isNow() && !p.isThere()).toList());
        things(blocks, "Buy later", all.stream().filter(p -> !p.isNow() && !p.isThere()).toList());
        things(blocks, "In the house", all.stream().filter(Purchase::isThere).toList());
        blocks.addAll(new CostBlocks(result.cost()).blocks());
        left.ifPresent(
                over ->
                        blocks.addAll(
                                new LeftBlocks(over, lay.orElseThrow(), result.cost(), tape)
                                        .blocks()));
        blocks.addAll(hours());
        return blocks;
    }

    private void things(List<Block> blocks, String name, List<Purchase> things) {
        if (things.isEmpty()) {
            return;
        }
        boolean isLater = things.stream().anyMatch(p -> !p.isNow() && !p.isThere());
        boolean isHad = things.stream().anyMatch(p -> p.have().isPresent());
        List<String> head = new ArrayList<>(List.of("Thing", "Needed"));
        if (isHad) {
            head.add("In the house");
        }
        head.addAll(List.of("To buy", "What for"));
        if (isLater) {
            head.addAll(List.of("Not before", "Why not"));
        }
        List<List<Table.Cell>> rows = new ArrayList<>();
        things.forEach(thing -> rows.add(row(thing, isHad, isLater)));
        blocks.add(new Block.Heading(name));
        blocks.add(new Block.Rows(new Table(name, "", head, rows)));
    }

    private List<Table.Cell> row(Purchase thing, boolean isHad, boolean isLater) {
        SupplyWords words = new SupplyWords(tape);
        List<Table.Cell> row = new ArrayList<>();
        row.add(Table.Cell.of(thing.item()));
        row.add(Table.Cell.of(words.needed(thing)));
        if (isHad) {
            row.add(Table.Cell.of(words.have(thing)));
        }
        row.add(Table.Cell.of(words.toBuy(thing)));
        row.add(Table.Cell.of(SupplyWords.why(thing)));
        if (isLater) {
            row.add(Table.Cell.of(SupplyWords.after(thing)));
            row.add(Table.Cell.of(String.join(" ", SupplyWords.reasons(thing))));
        }
        return row;
    }

    private List<Block> hours() {
        if (result.hours().isEmpty()) {
            return List.of();
        }
        List<Fact> facts = new ArrayList<>();
        result.hours()
                .forEach(
                        (work, time) ->
                                facts.add(
                                        Fact.of(
                                                work,
                                                time.toOptional()
                                                        .map(t -> t.words())
                                                        .orElse("not told"))));
        String without =
                result.untimed().isEmpty()
                        ? ""
                        : ", without " + String.join(", ", result.untimed());
        facts.add(Fact.of("In all", result.worked().words() + without));
        return List.of(
                new Block.Heading("Hours"),
                new Block.Facts(facts),
                new Block.Prose(
                        "As you kept them; none is guessed. Hours and prices are private: this page"
                                + " is for you."));
    }
}
