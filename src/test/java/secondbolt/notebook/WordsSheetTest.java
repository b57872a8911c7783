package secondbolt.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.block.Block;
import secondbolt.block.Both;
import secondbolt.block.Fact;
import secondbolt.block.Table;
import secondbolt.draw.Mark;
import secondbolt.draw.paper.Page;
import secondbolt.draw.paper.Paper;
import secondbolt.measure.Tape;
import secondbolt.notebook.paper.Desk;
import secondbolt.notebook.paper.PaperChoice;
import secondbolt.project.Heading;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Subject;

/** A sheet of words prints all it says, in the order it is said. */
class WordsSheetTest {
    private static final List<Block> WASH_DAY =
            List.of(
                    new Block.Verdict("Wash once more.", false),
                    new Block.Warnings(List.of("Soda ash is caustic.")),
                    new Block.Heading("Before"),
                    new Block.Ticks(
                            List.of(
                                    Block.Ticks.Item.open(
                                            "Weigh it dry",
                                            List.of("in a bag"),
                                            List.of(List.of("Mass", "822 g"))))),
                    new Block.Heading("The bath"),
                    new Block.Facts(List.of(new Fact("Water", Both.words("12 l")))),
                    new Block.Steps(List.of("Fill the tub.", "Lower the cloth in.")),
                    new Block.Rows(
                            Table.of(List.of("Way", "Now"), List.of(List.of("across", "48 cm")))),
                    new Block.Points(List.of("Line dry.")),
                    new Block.Prose("Write `prewash: done` then."));

    private static PrintedSheet printed(List<Block> blocks, Paper paper) {
        Heading heading = new Heading("Shirt", Optional.empty(), Tape.CENTIMETRE, Optional.empty());
        Sheet sheet =
                Sheet.ofWords("wash-day", "Wash day", Set.of(new Subject.Cloth("sheet")), blocks);
        return PrintedSheet.of(
                PrintedSheet.Asked.of(
                        heading, List.of(), sheet, PaperChoice.asked(paper, Desk.UNKNOWN)));
    }

    private static List<String> words(Page page) {
        List<String> words = new ArrayList<>();
        for (Mark mark : page.drawing().marks()) {
            if (mark instanceof Mark.Label label) {
                words.add(label.text());
            }
        }
        return words;
    }

    @Test
    void printsEachPartInItsOrderOnOnePage() {
        List<Page> pages = printed(WASH_DAY, Paper.A4).pages();
        assertEquals(1, pages.size());
        List<String> words = words(pages.get(0));
        List<Integer> places =
                List.of(
                                "Wash once more.",
                                "Soda ash is caustic.",
                                "Before",
                                "Weigh it dry",
                                "822 g",
                                "The bath",
                                "12 l",
                                "Fill the tub.",
                                "Lower the cloth in.",
                                "48 cm",
                                "Line dry.",
                                "Write “prewash: done” then.")
                        .stream()
                        .map(words::indexOf)
                        .toList();
        assertTrue(places.stream().allMatch(place -> place >= 0), places + " in " + words);
        assertEquals(places.stream().sorted().toList(), places);
    }

    @Test
    void hasAnotherCodeInAnotherOrder() {
        List<Block> turned = new ArrayList<>(WASH_DAY);
        Collections.reverse(turned);
        assertNotEquals(printed(WASH_DAY, Paper.A4).code(), printed(turned, Paper.A4).code());
    }

    /** However much there is to say, nothing is lost and nothing stands off the paper. */
    @ParameterizedTest
    @ValueSource(ints = {40, 150, 400})
    void goesOnOnAsManyPagesAsItNeeds(int count) {
        List<Block.Ticks.Item> items =
                IntStream.range(0, count)
                        .mapToObj(
                                i ->
                                        Block.Ticks.Item.open(
                                                "Step " + i,
                                                List.of("What it waits for, told at length " + i),
                                                List.of()))
                        .toList();
        List<Page> pages = printed(List.of(new Block.Ticks(items)), Paper.A4).pages();
        List<String> words = pages.stream().flatMap(page -> words(page).stream()).toList();
        for (int i = 0; i < count; i++) {
            String step = "Step " + i;
            assertEquals(1, words.stream().filter(step::equals).count(), step);
        }
        for (Page page : pages) {
            double low = page.drawing().frame().bottomMm();
            for (Mark mark : page.drawing().marks()) {
                if (mark instanceof Mark.Label label) {
                    assertTrue(label.at().yMm() < low, label.text());
                }
            }
        }
    }
}
