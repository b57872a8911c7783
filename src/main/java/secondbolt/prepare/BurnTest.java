package secondbolt.prepare;

import java.util.List;
import java.util.stream.Stream;
import secondbolt.block.Block;
import secondbolt.block.Table;

/**
 * How to find out a fibre by burning a thread.
 *
 * <p>Source: burn-test notes, mytextilenotes, 2009; trade notes on burn tests, cleanitup. The
 * cautions that belong to it are a finding of the cloth.
 */
final class BurnTest {
    private static final List<String> HEAD =
            List.of("Fibre", "In the flame", "Smell", "What is left");
    private static final List<List<String>> ROWS =
            List.of(
                    List.of(
                            "cotton, linen, hemp",
                            "burns readily and glows on; linen slower",
                            "paper",
                            "soft grey ash"),
                    List.of("viscose", "burns readily", "paper", "little soft ash"),
                    List.of(
                            "wool, silk",
                            "shrinks away and smoulders",
                            "hair",
                            "dark bead that crumbles"),
                    List.of(
                            "polyester, polyamide",
                            "melts and drips",
                            "sweetish, or like celery",
                            "hard bead"),
                    List.of("acrylic", "burns fast", "", "hard bead"));

    private BurnTest() {}

    /** What to do, and what to look for. */
    static List<Block> blocks() {
        List<List<Table.Cell>> rows =
                ROWS.stream().map(row -> row.stream().map(Table.Cell::of).toList()).toList();
        return Stream.<Block>of(
                        new Block.Heading("Which fibre is it?"),
                        new Block.Prose(
                                "A label, or one who sold or made it, tells more than a flame. If"
                                        + " you burn a thread, do it as the caution says, one thread"
                                        + " of the length and one of the width by itself: they need"
                                        + " not be of one fibre. Hold it to the side of the flame,"
                                        + " draw it away, and look."),
                        new Block.Rows(
                                new Table(
                                        "What a thread does in a flame",
                                        "Burn tests of single fibres (burn-test notes of 2009;"
                                                + " trade notes on burn tests)",
                                        HEAD,
                                        rows)),
                        new Block.Prose(
                                "A bead and ash together, or a smell of both kinds, speak for a"
                                        + " blend, of which no flame tells the shares. A finish can"
                                        + " change all of it. If it stays in doubt, write"
                                        + " `unknown`: the lowest heat then holds."))
                .toList();
    }
}
