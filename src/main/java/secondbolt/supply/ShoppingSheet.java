package secondbolt.supply;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.block.Block;
import secondbolt.measure.Tape;
import secondbolt.supply.list.Purchase;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.SheetName;
import secondbolt.worksheet.Subject;

/**
 * The list she takes to the shop, to tick off: now, and after each step that things wait for. It
 * bears no prices, for it lies about.
 *
 * @param result what is bought
 * @param tape to print with
 */
record ShoppingSheet(SupplyResult result, Tape tape) {
    private static final String TITLE = "Shopping list";

    /** None if nothing is wanted. */
    List<Sheet> sheets() {
        List<Purchase> all = result.shopping().purchases();
        if (all.isEmpty()) {
            return List.of();
        }
        Set<Subject> shows =
                all.stream().map(p -> new Subject.Supply(p.item())).collect(Collectors.toSet());
        return List.of(Sheet.ofWords(SheetName.of("shopping list"), TITLE, shows, blocks(all)));
    }

    private List<Block> blocks(List<Purchase> all) {
        List<Block> blocks = new ArrayList<>();
        List<Purchase> bought = all.stream().filter(p -> !p.isThere()).toList();
        add(blocks, "Buy now", bought.stream().filter(Purchase::isNow).toList());
        Map<String, List<Purchase>> later = new LinkedHashMap<>();
        bought.stream()
                .filter(p -> !p.isNow())
                .forEach(
                        p ->
                                later.computeIfAbsent(SupplyWords.after(p), s -> new ArrayList<>())
                                        .add(p));
        later.forEach(
                (after, things) -> {
                    Set<String> reasons = new LinkedHashSet<>();
                    things.forEach(p -> reasons.addAll(SupplyWords.reasons(p)));
                    blocks.add(new Block.Heading("After " + after + ", not before"));
                    blocks.add(new Block.Points(List.copyOf(reasons)));
                    blocks.add(ticks(things));
                });
        add(blocks, "In the house", all.stream().filter(Purchase::isThere).toList());
        return blocks;
    }

    private void add(List<Block> blocks, String heading, List<Purchase> things) {
        if (!things.isEmpty()) {
            blocks.add(new Block.Heading(heading));
            blocks.add(ticks(things));
        }
    }

    private Block ticks(List<Purchase> things) {
        return new Block.Ticks(things.stream().map(this::item).toList());
    }

    private Block.Ticks.Item item(Purchase purchase) {
        SupplyWords words = new SupplyWords(tape);
        List<String> notes = new ArrayList<>();
        if (!SupplyWords.why(purchase).isEmpty()) {
            notes.add(SupplyWords.why(purchase));
        }
        String needed = SupplyWords.together(words.needed(purchase));
        if (purchase.isThere()) {
            notes.add("needed: " + needed);
            return Block.Ticks.Item.done(
                    purchase.item() + ": " + SupplyWords.together(words.have(purchase)), notes);
        }
        String buy = SupplyWords.together(words.toBuy(purchase));
        String have = SupplyWords.together(words.have(purchase));
        if (!words.needed(purchase).own().equals(words.toBuy(purchase).own())) {
            notes.add("needed: " + needed + (have.isEmpty() ? "" : ", in the house: " + have));
        }
        return Block.Ticks.Item.open(purchase.item() + ": " + buy, notes, List.of());
    }
}
