package secondbolt.draw.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/** Paper against the published sizes. */
class PaperTest {
    /**
     * ISO 216:2007, table of the A series; ANSI/ASME Y14.1, sizes A and B; Legal: 8.5 by 14 in,
     * common practice; what A4 and Letter share: the smaller of each side.
     */
    @ParameterizedTest
    @CsvSource({
        "a4, 210, 297",
        "a3, 297, 420",
        "letter, 215.9, 279.4",
        "legal, 215.9, 355.6",
        "tabloid, 279.4, 431.8",
        "a4+letter, 210, 279.4"
    })
    void hasTheStandardSize(String name, double across, double along) {
        Paper paper = Paper.named(name).orElseThrow();
        assertEquals(across, paper.across().millimetres(), 1e-12);
        assertEquals(along, paper.along().millimetres(), 1e-12);
        assertTrue(Paper.names().contains(name));
    }

    /** What is typed in a file is not what is said of paper. */
    @ParameterizedTest
    @CsvSource({
        "a4, A4",
        "letter, Letter",
        "a4+letter, A4 or Letter",
        "36in-roll, 36 in roll",
        "24in-roll, 24 in roll"
    })
    void isSaidAsAShopSaysIt(String name, String words) {
        assertEquals(words, Paper.named(name).orElseThrow().words());
    }

    @Test
    void everyPaperIsSaidInOtherWordsThanItIsTyped() {
        Paper.names().forEach(n -> assertFalse(Paper.named(n).orElseThrow().words().equals(n), n));
    }

    @Test
    void namesPaperOfAnySizeByItsSides() {
        Length across = Length.ofMillimetres(210);
        Paper paper = Paper.custom(across, Length.ofMillimetres(297), Tape.CENTIMETRE);
        assertEquals("21 cm x 29.7 cm", paper.name());
    }

    @Test
    void refusesPaperWithoutRoomForTheTestSquare() {
        Length small = Length.ofMillimetres(120);
        assertFalse(Paper.leaveRoom(small, Length.ofMillimetres(297)));
        assertThrows(
                IllegalArgumentException.class,
                () -> Paper.custom(small, Length.ofMillimetres(297), Tape.CENTIMETRE));
    }
}
