package secondbolt.prepare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Table;
import secondbolt.file.value.AcrossAlong;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.prepare.due.Preparation;
import secondbolt.prepare.due.PreparedCloth;
import secondbolt.prepare.wash.Change;
import secondbolt.prepare.wash.Washes;

/**
 * What the page says of washes: those that are done, by the square, and how the next is done.
 *
 * @param all the cloths
 * @param tape to print with
 */
record WashWords(Preparation all, Tape tape) {
    private static final String OPEN = "open";
    private static final List<String> HEAD =
            List.of("Measured", "Across", "Change across", "Along", "Change along");
    private static final String AS_IT_WILL_BE =
            "Wash and dry the cloth as the garment will be washed and dried, and no hotter than the"
                    + " table says (common practice, no source). Most of what it draws in it does in"
                    + " its first wash, then less and less; ironing can stretch some of it out again"
                    + " (a paper on the shrinkage of cotton goods). Cloth sold as pre-shrunk is no"
                    + " exception: the word has meant under 3 % left (an encyclopaedia) and at most"
                    + " 1 % (from memory). Measure.";
    private static final String NOTIONS =
            "Lining, tapes, elastic, zips and sew-in interfacing draw in too: wash them with the"
                    + " cloth (a sewing teacher's article), and braid more than once (Watson,"
                    + " Textiles and Clothing, 1907).";
    private static final List<String> WOOL =
            List.of(
                    "Wool felts by heat, motion and soap or alkali together (Beech, The Dyeing of"
                            + " Woollen Fabrics, 1902): keep all three low. Measure it first. One"
                            + " blanket at a time, the soap dissolved in the water before it goes"
                            + " in, all waters of one heat, hand-warm or cold.",
                    "Let it soak 10 to 15 minutes (a household text on wool blankets) without"
                            + " rubbing, wringing or running water on it (a hand weaver's care"
                            + " page). What it draws in without felting it does within 30 minutes"
                            + " of wetting at room temperature (a paper on the relaxation of wool).",
                    "Spin it for about a minute and lay it square. A blanket that stays one is"
                            + " pulled to its old size then (the same household text); cloth that"
                            + " will be cut is not stretched, or it draws in again on the wearer"
                            + " (common practice, no source).");
    private static final String DRYING =
            "How a wool blanket is dried is told in two ways. A household text: in a hot dryer with"
                    + " three or four dry towels for about 20 minutes, and out while it is damp. A"
                    + " hand weaver's care page: in no dryer at all. For cloth that will be cut, dry"
                    + " it flat in the air (common practice, no source).";

    /** How the wash that is due is done. */
    List<Block> howToWash() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("The wash before cutting"));
        blocks.add(new Block.Prose(AS_IT_WILL_BE));
        blocks.add(new Block.Prose(NOTIONS));
        if (all.hasAny(c -> c.isWetDue() && c.felts())) {
            blocks.add(new Block.Steps(WOOL));
            blocks.add(new Block.Prose(DRYING));
        }
        return blocks;
    }

    /** The square of a cloth at each measuring, and what follows. */
    List<Block> square(PreparedCloth cloth) {
        Washes washes = cloth.washes().orElseThrow();
        AcrossAlong<Optional<Change>> none = new AcrossAlong<>(Optional.empty(), Optional.empty());
        List<List<Table.Cell>> rows = new ArrayList<>();
        rows.add(row("before the wash", washes.squares().get(0), none, ""));
        for (int wash = 1; wash <= washes.count(); wash++) {
            rows.add(
                    row(
                            washes.count() == 1 ? "after the wash" : "after wash " + wash,
                            washes.squares().get(wash),
                            washes.changes().get(wash - 1),
                            OPEN));
        }
        if (washes.count() > 1) {
            AcrossAlong<Optional<Change>> together = washes.together();
            rows.add(
                    List.of(
                            Table.Cell.of("all washes together"),
                            Table.Cell.of(""),
                            Table.Cell.of(change(together.across(), OPEN)),
                            Table.Cell.of(""),
                            Table.Cell.of(change(together.along(), OPEN))));
        }
        return List.of(
                new Block.Rows(
                        new Table(
                                "The marked square of " + cloth.name(),
                                "The marked square of "
                                        + cloth.name()
                                        + ", each wash against the measuring before it (ISO 5077)",
                                HEAD,
                                rows)),
                new Block.Prose(verdict(washes)));
    }

    private List<Table.Cell> row(
            String name,
            AcrossAlong<Optional<Length>> square,
            AcrossAlong<Optional<Change>> change,
            String unknown) {
        return List.of(
                Table.Cell.of(name),
                Table.Cell.of(Both.of(tape, square.across(), OPEN)),
                Table.Cell.of(change(change.across(), unknown)),
                Table.Cell.of(Both.of(tape, square.along(), OPEN)),
                Table.Cell.of(change(change.along(), unknown)));
    }

    private static String change(Optional<Change> change, String unknown) {
        return change.map(Change::words).orElse(unknown);
    }

    private String verdict(Washes washes) {
        if (washes.isMoving()) {
            return "It was still moving in its last wash, by more than 1 % and more than a tape can"
                    + " miss.";
        }
        return washes.isSettled()
                ? "It has settled: its last wash changed it by no more than 1 %, or no more than"
                        + " a tape can miss ("
                        + tape.printSmall(Change.READING)
                        + ")."
                : "Whether it has settled is open until it is measured both ways.";
    }
}
