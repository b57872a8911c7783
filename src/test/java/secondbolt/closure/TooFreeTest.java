package secondbolt.closure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.project.Topics;
import secondbolt.project.Workshop;

/** A row with more ways to lie than can be looked through is told at the range that allows them. */
class TooFreeTest {
    /** Its last may lie nearly anywhere, between places to meet that lie on bulk. */
    private static final String TENT =
            """
            title: Tent
            units: cm
            closures:
              door:
                length: 300
                extension: 2
                buttons: 27
                button: {across: 4 mm, thick: 1 mm}
                holes: level
                laps: right over left
                first: {between: [0, 42.7]}
                last: {between: [0, 198.6]}
                meet: [{at: 225.6}, {at: 149.8}, {at: 31.8}, {at: 241.2}, {at: 134.5}, {at: 152.3}]
                bulk:
                  - {at: 226.4, clear: 14.2}
                  - {at: 140.6, clear: 9.5}
                  - {at: 143.6, clear: 16.1}
                  - {at: 236, clear: 5.5}
                  - {at: 53.5, clear: 0.6}
            """;

    private static List<Mistake> mistakes(String text) {
        Mistakes mistakes = new Mistakes();
        new Workshop(Topics.all(LayDesk.inMemory()))
                .work(SourceFile.of("project.yaml", text), "tent", mistakes);
        return mistakes.inOrder();
    }

    @Test
    void isToldAtTheWiderRange() {
        List<Mistake> told = mistakes(TENT);
        assertEquals(1, told.size(), told.toString());
        assertEquals(12, told.get(0).place().line());
        assertTrue(
                told.get(0).found().startsWith("`last` anywhere in 198.6 cm (")
                        && told.get(0).found().contains("which leaves the row too free"),
                told.toString());
        assertEquals("a narrower range, or fewer buttons", told.get(0).right());
    }

    /** What is told helps. */
    @Test
    void isNotToldOfANarrowerRange() {
        assertEquals(List.of(), mistakes(TENT.replace("[0, 198.6]", "[2, 7]")));
    }
}
