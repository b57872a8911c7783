package secondbolt.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.garment.PieceEdge;

class EdgeSumTest {
    @ParameterizedTest
    @CsvSource({
        "front.side, 1, front, side",
        "2 front.side, 2, front, side",
        "12  left front.side, 12, left front, side",
        "2front.side, 1, 2front, side",
        "100 front.side, 1, 100 front, side",
        "2.side, 1, 2, side",
        "2 .side, 1, 2, side",
        "2 前身頃.脇, 2, 前身頃, 脇"
    })
    void readsACountAndAnEdge(String text, int count, String piece, String edge) {
        EdgeSum.Term term = new EdgeSum.Term(count, new PieceEdge(piece, edge));
        assertEquals(Optional.of(new EdgeSum(List.of(term))), EdgeSum.parse(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "front",
                "0 front.side",
                "front.side +",
                "+ front.side",
                "front.side ++ back.side",
                "2 front",
                "front.side.top",
                "2 front. + back.side"
            })
    void refusesWhatIsNoSum(String text) {
        assertEquals(Optional.empty(), EdgeSum.parse(text));
    }

    @Test
    void isReadBackAsItIsWritten() {
        String text = "2 front.neckline + back.neck line";
        assertEquals(
                text, EdgeSum.parse(" 2 front.neckline+back . neck line").orElseThrow().toString());
    }
}
