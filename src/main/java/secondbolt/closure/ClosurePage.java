package secondbolt.closure;

import java.util.ArrayList;
import java.util.List;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Fact;
import secondbolt.block.Table;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.fastening.Overlap;
import secondbolt.closure.row.ClosureResult;
import secondbolt.closure.row.FastenerRow;
import secondbolt.closure.row.OtherCount;
import secondbolt.closure.strip.LapSides;
import secondbolt.closure.strip.PlacketPicture;
import secondbolt.measure.Length;
import secondbolt.measure.Plural;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Convention;

/**
 * What the page shows of a closure.
 *
 * @param result the closure
 */
record ClosurePage(ClosureResult result) {
    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(result.name()));
        blocks.add(
                new Block.Picture(
                        PlacketPicture.of(result),
                        seen() + " A picture, not for measuring: mark from the printed strip."));
        blocks.add(new Block.Facts(facts()));
        blocks.add(new Block.Rows(new MarkTable(result).onPage()));
        if (!result.advice().counts().isEmpty()) {
            blocks.add(new Block.Rows(counts()));
        }
        return blocks;
    }

    private String seen() {
        LapSides sides = new LapSides(result.closure().overlap());
        return "The "
                + sides.over()
                + (result.closure().isLapped() ? ", which lies over" : "")
                + ", seen from outside: top edge to the left, finished edge "
                + (PlacketPicture.edgeIsAbove(result) ? "above." : "below.")
                + (result.plan().bulks().isEmpty()
                        ? ""
                        : " Dotted across: where "
                                + (result.closure().fastening().hasHoles()
                                        ? "no hole can be stitched."
                                        : "bulk lies."));
    }

    private List<Fact> facts() {
        Tape tape = result.tape();
        Fastening fastening = result.closure().fastening();
        Overlap overlap = result.closure().overlap();
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("Placket, edge to edge", tape, result.length()));
        result.gap()
                .ifPresent(
                        gap -> facts.add(Fact.of("From one to the next, on average", tape, gap)));
        if (!result.row().uneven().isShorterThan(tape.mark())) {
            facts.add(Fact.of("The gap that differs most, by", tape, result.row().uneven()));
        }
        if (fastening.hasHoles()) {
            facts.add(small("Buttonhole, between its bars", result.hole()));
        }
        if (result.closure().isLapped()) {
            facts.add(small("Centre line to finished edge", overlap.extension()));
        }
        overlap.rowsApart().ifPresent(apart -> facts.add(Fact.of("From row to row", tape, apart)));
        if (fastening.hasHoles()) {
            facts.add(Fact.of("Holes", holes()));
        }
        if (result.closure().isLapped()) {
            facts.add(Fact.of("Laps", overlap.laps().word() + ", from the wearer's side"));
        }
        facts.add(toBuy());
        return facts;
    }

    private Fact small(String label, Length length) {
        return new Fact(label, Both.of(result.tape(), tape -> tape.printSmall(length)));
    }

    private Fact toBuy() {
        Fastening.Kind kind = result.closure().fastening().kind();
        return kind == Fastening.Kind.TIES
                ? Fact.of("To sew", Plural.of(result.toBuy(), "pair of ties", "pairs of ties"))
                : Fact.of(
                        "To buy",
                        Plural.of(result.toBuy(), kind.one(), kind.word())
                                + ", and one to spare ("
                                + Convention.COMMON_PRACTICE
                                + ")");
    }

    private String holes() {
        return Plural.of(result.marks().size(), "hole")
                + ", "
                + result.closure().fastening().holes().word()
                + (result.closure().fastening().differing().isEmpty()
                        ? ""
                        : " but for those marked otherwise")
                + (result.closure().isUpright()
                        ? ": begin and end are from the top edge"
                        : ": they begin outside the line of the buttons and run inward")
                + (result.closure().overlap().isHidden()
                        ? "; worked in the hidden layer only"
                        : "");
    }

    private Table counts() {
        String usual = result.closure().isLapped() ? " " + UsualGap.sentence(result.tape()) : "";
        String ends =
                "Fewer or more, between the same ends"
                        + result.closure()
                                .spread()
                                .largestGap()
                                .map(gap -> ", no gap wider than " + result.tape().print(gap))
                                .orElse("")
                        + ".";
        return new Table(
                "Other counts for " + result.name(),
                ends + usual,
                List.of("Count", "Gap, on average", "A gap differs by", "In the way"),
                result.advice().counts().stream().map(this::count).toList());
    }

    private List<Table.Cell> count(OtherCount other) {
        Tape tape = result.tape();
        FastenerRow row = other.row();
        boolean isTaken = other.count() == result.marks().size();
        boolean isEven = row.uneven().isShorterThan(tape.mark());
        return List.of(
                Table.Cell.of(other.count() + (isTaken ? " (this one)" : "")),
                Table.Cell.of(Both.of(tape, row.gap(), "")),
                Table.Cell.of(isEven ? "even" : tape.print(row.uneven())),
                Table.Cell.of(inTheWay(row)));
    }

    private static String inTheWay(FastenerRow row) {
        List<String> conflicts = new ArrayList<>();
        if (!row.byHand().isEmpty()) {
            conflicts.add(Plural.of(row.byHand().size(), "hole") + " on bulk");
        }
        row.unmet().forEach(spot -> conflicts.add("none at " + spot.why()));
        if (row.isSeenUneven()) {
            conflicts.add("uneven");
        }
        return String.join(", ", conflicts);
    }
}
