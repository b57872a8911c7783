package secondbolt.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Fact;
import secondbolt.block.Table;
import secondbolt.lay.NewClothInstead;
import secondbolt.lay.design.DesignLay;
import secondbolt.lay.design.LayResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.supply.cost.Cost;
import secondbolt.supply.left.LeftOver;
import secondbolt.supply.left.RemnantUse;
import secondbolt.supply.plan.Currency;

/**
 * What the page says of the cloth: recovered, used and left, and what new cloth would have cost.
 *
 * @param left what stays over of the chosen design's cloth
 * @param lay the designs laid
 * @param cost for its money
 * @param tape to print with
 */
record LeftBlocks(LeftOver left, LayResult lay, Cost cost, Tape tape) {
    /** The most demanding ones; what is good for a bag is good for a patch, as she knows. */
    private static final int MOST_USES = 3;

    List<Block> blocks() {
        if (!left.sound().isPositive()) {
            return List.of();
        }
        DesignLay made = lay.made();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Recovered, sound", Both.of(tape, left.sound())));
        facts.add(new Fact("Used", Both.of(tape, left.used())));
        if (made.fits()) {
            facts.add(new Fact("Left, offcuts counted", Both.of(tape, left.left())));
        }
        NewClothInstead instead = NewClothInstead.of(lay.plan(), tape);
        instead.length(made).ifPresent(length -> facts.add(Fact.of("New cloth instead", length)));
        instead.saved(made)
                .ifPresent(saved -> facts.add(Fact.of("It would have cost", saved + money())));
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("The cloth: recovered, used, left"));
        blocks.add(new Block.Facts(facts));
        if (made.fits() && !left.rectangles().isEmpty()) {
            blocks.add(new Block.Rows(rectangles()));
        }
        return blocks;
    }

    /** Her price of new cloth may be in money that she does not name. */
    private String money() {
        return cost.currency().equals(Currency.UNTOLD)
                ? ", in the money its price is in"
                : " " + cost.currency().word();
    }

    private Table rectangles() {
        return new Table(
                "What is left in rectangles",
                "Rectangles beside the pieces, the largest first; each is good for one of what is"
                        + " named, by its size (common practice, no source). Bias strips that are"
                        + " needed come out of them too.",
                List.of("Cloth", "Across by along", "Begins", "Good for"),
                left.rectangles().stream().map(this::row).toList());
    }

    private List<Table.Cell> row(LeftOver.Rectangle rectangle) {
        return List.of(
                Table.Cell.of(rectangle.cloth()),
                Table.Cell.of(
                        Both.of(
                                tape,
                                on ->
                                        size(rectangle.box(), on)
                                                + (rectangle.isDouble() ? ", double" : ""))),
                Table.Cell.of(Both.of(tape, on -> begins(rectangle, on))),
                Table.Cell.of(
                        rectangle.uses().stream()
                                .limit(MOST_USES)
                                .map(RemnantUse::words)
                                .collect(Collectors.joining("; "))));
    }

    /** Never more than there is. */
    private static String size(Box box, Tape on) {
        return down(box.widthMm(), on) + " by " + down(box.heightMm(), on);
    }

    private static String down(double mm, Tape on) {
        return on.print(Length.ofComputedMillimetres(mm).roundedDownTo(on.mark()));
    }

    private static String begins(LeftOver.Rectangle rectangle, Tape on) {
        return on.print(Length.ofComputedMillimetres(rectangle.box().leftMm()))
                + (rectangle.isDouble() ? " from the fold, " : " from the left, ")
                + on.print(Length.ofComputedMillimetres(rectangle.box().topMm()))
                + " from the top";
    }
}
