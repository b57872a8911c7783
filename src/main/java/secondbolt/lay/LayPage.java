package secondbolt.lay;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Fact;
import secondbolt.block.Table;
import secondbolt.garment.Role;
import secondbolt.lay.design.DesignLay;
import secondbolt.lay.design.LayResult;
import secondbolt.lay.picture.CuttingPlan;
import secondbolt.lay.picture.LayDrawing;
import secondbolt.lay.picture.NumberedPiece;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;

/**
 * The page of the lay.
 *
 * @param result the designs
 * @param plans the cutting plans of the chosen one
 * @param tape to print with
 */
record LayPage(LayResult result, List<CuttingPlan> plans, Tape tape) {
    private static final String CAPTION_AGAIN = "Drawn and marked as the first plan is.";
    private static final List<String> HEAD =
            List.of(
                    "No.",
                    "Piece",
                    "Lies",
                    "Box begins",
                    "Corner of",
                    "From the left",
                    "From the top");

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        List<String> leftOver =
                result.made().stocks().stream()
                        .flatMap(stock -> LayWords.counted(stock.leftOver()).stream())
                        .toList();
        blocks.add(new Block.Verdict(verdict(), leftOver.isEmpty()));
        List<Fact> facts = facts();
        if (!facts.isEmpty()) {
            blocks.add(new Block.Facts(facts));
        }
        if (!leftOver.isEmpty()) {
            String pieces = String.join(", ", leftOver);
            blocks.add(new Block.Prose("No room was found for: " + pieces + "."));
            blocks.addAll(remedies());
        }
        Set<String> told = new HashSet<>();
        plans.forEach(plan -> blocks.addAll(plan(plan, told.add(LayDrawing.caption(plan)))));
        blocks.addAll(new DesignRows(result, tape).blocks());
        blocks.addAll(new BoltRows(result, tape).blocks());
        return blocks;
    }

    private String verdict() {
        DesignLay made = result.made();
        if (made.stocks().isEmpty()) {
            return "There is no sound cloth to lay the pieces on yet.";
        }
        String all =
                (made.design().isPresent() ? "All pieces of " + made.name() : "All pieces")
                        + (isWithoutCloth(made) ? " for which there is cloth" : "");
        return made.fits()
                ? all + " have their place on the cloth." + slack()
                : "Not all pieces of "
                        + made.name()
                        + " have their place"
                        + lacks()
                        + ". Do not cut yet.";
    }

    /** Whether pieces of a role wait for a cloth, which the findings tell. */
    private static boolean isWithoutCloth(DesignLay made) {
        List<Role> roles = made.stocks().stream().map(StockLay::role).toList();
        return made.bolts().stream().anyMatch(bolt -> !roles.contains(bolt.role()));
    }

    private List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        for (StockLay stock : result.made().stocks()) {
            String of = result.made().stocks().size() > 1 ? ", " + stock.role() : "";
            facts.add(Fact.of("Pieces laid" + of, Integer.toString(stock.laid().size())));
            int cut = stock.spreads().stream().mapToInt(s -> s.cuts().holes().size()).sum();
            if (cut > 0) {
                facts.add(Fact.of("Pieces cut already" + of, Integer.toString(cut)));
            }
            facts.add(
                    new Fact(
                            "Sound cloth used" + of,
                            new Both(
                                    LayWords.percent(stock.usedShare()),
                                    tape.print(stock.used())
                                            + " of "
                                            + tape.print(stock.sound()))));
        }
        if (result.others().isEmpty()) {
            NewClothInstead instead = NewClothInstead.of(result.plan(), tape);
            String saved = instead.saved(result.made()).map(price -> "saves " + price).orElse("");
            instead.length(result.made())
                    .map(cloth -> new Fact("New cloth instead", new Both(cloth, saved)))
                    .ifPresent(facts::add);
        }
        return facts;
    }

    /** A sentence for each cloth that pieces lie on. */
    private String slack() {
        double gapMm = result.plan().gapOrUsual().millimetres();
        StringBuilder all = new StringBuilder();
        for (StockLay stock : result.made().stocks()) {
            for (int i = 0; i < stock.spreads().size(); i++) {
                String cloth = stock.spreads().get(i).name();
                stock.slack(i, gapMm)
                        .map(slack -> " On " + cloth + ": " + new LayWords(tape).slack(slack) + ".")
                        .ifPresent(all::append);
            }
        }
        return all.toString();
    }

    private String lacks() {
        return result.made().stocks().stream()
                .map(stock -> new LayWords(tape).lack(result, stock))
                .filter(words -> !words.isEmpty())
                .map(words -> "; " + words)
                .collect(Collectors.joining());
    }

    private List<Block> remedies() {
        if (result.remedies().isEmpty()) {
            return List.of();
        }
        List<Fact> facts =
                result.remedies().stream()
                        .map(
                                remedy ->
                                        Fact.of(
                                                "With " + remedy.words(),
                                                remedy.leftOver().isEmpty()
                                                        ? "everything fits"
                                                        : "left out: "
                                                                + String.join(
                                                                        ", ", remedy.leftOver())))
                        .toList();
        return List.of(new Block.Prose("Tried quickly in its stead:"), new Block.Facts(facts));
    }

    private List<Block> plan(CuttingPlan plan, boolean isFirst) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(plan.name()));
        blocks.add(
                new Block.Picture(
                        plan.drawing(), isFirst ? LayDrawing.caption(plan) : CAPTION_AGAIN));
        blocks.add(new Block.Prose("Stays over: " + new LayWords(tape).over(plan) + "."));
        if (!plan.pieces().isEmpty()) {
            blocks.add(new Block.Rows(pieces(plan)));
        }
        return blocks;
    }

    private Table pieces(CuttingPlan plan) {
        String name = "Pieces on " + plan.name();
        return new Table(
                name,
                name
                        + "; distances are from the left edge and from the top of the trimmed and"
                        + " washed cloth",
                HEAD,
                plan.pieces().stream().flatMap(piece -> rows(piece).stream()).toList());
    }

    /** One row for each pin point; one without any if there is none. */
    private List<List<Table.Cell>> rows(NumberedPiece numbered) {
        LayWords words = new LayWords(tape);
        List<List<String>> pins = new ArrayList<>();
        numbered.laid().ifPresent(laid -> laid.pins().forEach(pin -> pins.add(words.row(pin))));
        if (pins.isEmpty()) {
            pins.add(List.of("", "", ""));
        }
        Box box = numbered.region().box();
        String lies = numbered.lies().words();
        List<List<Table.Cell>> rows = new ArrayList<>();
        for (List<String> pin : pins) {
            List<Table.Cell> row = new ArrayList<>();
            if (rows.isEmpty()) {
                List.of(
                                Integer.toString(numbered.number()),
                                numbered.words(),
                                numbered.laid().isPresent() ? lies : "cut already, " + lies,
                                words.length(box.leftMm()) + ", " + words.length(box.topMm()))
                        .forEach(text -> row.add(Table.Cell.of(text).over(pins.size())));
            }
            pin.forEach(text -> row.add(Table.Cell.of(text)));
            rows.add(row);
        }
        return rows;
    }
}
