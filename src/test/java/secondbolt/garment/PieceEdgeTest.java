package secondbolt.garment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PieceEdgeTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "front.side|front|side",
                "left front.centre front|left front|centre front",
                " front . side |front|side",
                "front.\u00a0side|front|\u00a0side",
                "2.3|2|3",
                "front-2/b.side (upper)|front-2/b|side (upper)",
                "Vorderteil.Ärmelloch|Vorderteil|Ärmelloch",
                "前身頃.脇|前身頃|脇",
                "перед.бок|перед|бок",
                "الأمام.الجنب|الأمام|الجنب",
                "\ud83e\udea1.\ud83e\uddf5|\ud83e\udea1|\ud83e\uddf5"
            })
    void readsTwoNamesWithADotBetween(String text, String piece, String edge) {
        assertEquals(Optional.of(new PieceEdge(piece, edge)), PieceEdge.parse(text));
    }

    @ParameterizedTest
    @CsvSource({
        "front, hem, the hem of the front",
        "front panel, right, the right edge of the front panel",
        "pocket, lower left, the lower left edge of the pocket",
        "front, pocket top, the pocket top of the front",
        "Vorderteil, Ärmelloch, the Ärmelloch of the Vorderteil"
    })
    void isSaidAsAMakerSaysIt(String piece, String edge, String said) {
        PieceEdge one = new PieceEdge(piece, edge);
        assertEquals(said, one.words());
        assertEquals(said, "the " + one.heading());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                ".",
                " . ",
                "front",
                "front.",
                ".side",
                "front. ",
                "front..side",
                "a.b.c",
                ".front.side",
                "front．side",
                "前身頃。脇"
            })
    void refusesWhatIsNotTwoNames(String text) {
        assertEquals(Optional.empty(), PieceEdge.parse(text));
    }

    @Test
    void isReadBackAsItIsWritten() {
        PieceEdge edge = new PieceEdge("left front", "centre front");
        assertEquals("left front.centre front", edge.toString());
        assertEquals(Optional.of(edge), PieceEdge.parse(edge.toString()));
    }
}
