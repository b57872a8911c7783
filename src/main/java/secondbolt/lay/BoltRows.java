package secondbolt.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import secondbolt.block.Block;
import secondbolt.block.Table;
import secondbolt.garment.Role;
import secondbolt.lay.design.BoltLength;
import secondbolt.lay.design.DesignLay;
import secondbolt.lay.design.LayResult;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Sentence;

/**
 * Lengths from the bolt in tables: one for each design and cloth on the page, one of all on the
 * yardage summary.
 *
 * @param result the designs
 * @param tape to print with
 */
record BoltRows(LayResult result, Tape tape) {
    private static final String TOO_NARROW = "too narrow";

    /** Width, lay, what to buy, and what the envelope says. */
    private List<String> row(DesignLay design, BoltLength bolt) {
        return List.of(
                tape.print(bolt.width()),
                bolt.length().map(tape::print).orElse(TOO_NARROW),
                bolt.toBuy().map(tape::printShop).orElse(TOO_NARROW),
                design.printedNeed(bolt).map(tape::printShop).orElse(""));
    }

    /** As the page shows them; nothing if there are none. */
    List<Block> blocks() {
        if (result.designs().stream().allMatch(design -> design.bolts().isEmpty())) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("From the bolt"));
        blocks.add(
                new Block.Prose(
                        "How long a sound cloth would have to be, laid and with nap and repeat as"
                                + " the cloth above; to buy, rounded up as shops cut. Found by a"
                                + " quick search: a skilled hand may do with a little less."
                                + LayWords.cutAsWell(result)));
        for (DesignLay design : result.designs()) {
            Map<Role, List<List<Table.Cell>>> byRole = new LinkedHashMap<>();
            for (BoltLength bolt : design.bolts()) {
                byRole.computeIfAbsent(bolt.role(), role -> new ArrayList<>())
                        .add(row(design, bolt).stream().map(Table.Cell::of).toList());
            }
            byRole.forEach((role, rows) -> blocks.add(table(design.name() + ", " + role, rows)));
        }
        return blocks;
    }

    private static Block table(String what, List<List<Table.Cell>> rows) {
        return new Block.Rows(
                new Table(
                        "Lengths from the bolt, " + what,
                        Sentence.capital(what),
                        List.of("Bolt width", "Lay", "To buy", "Envelope"),
                        rows));
    }

    /** As the yardage summary prints them: what the envelopes say only if one says anything. */
    Table summary() {
        boolean printed = result.designs().stream().anyMatch(DesignLay::hasPrintedNeed);
        List<String> head = List.of("Design and cloth", "Width", "Lay", "Buy", "Envelope says");
        int columns = printed ? head.size() : head.size() - 1;
        List<List<String>> rows = new ArrayList<>();
        for (DesignLay design : result.designs()) {
            String last = "";
            for (BoltLength bolt : design.bolts()) {
                String name = design.name() + ", " + bolt.role();
                List<String> row = new ArrayList<>();
                row.add(name.equals(last) ? "" : name);
                row.addAll(row(design, bolt));
                rows.add(row.subList(0, columns));
                last = name;
            }
        }
        return Table.of(head.subList(0, columns), rows);
    }
}
