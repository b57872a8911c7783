package secondbolt.garment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What names say in the trade's English; the words are common practice. */
class ServesTest {
    @ParameterizedTest
    @CsvSource({
        "side, SIDE",
        "left side seam, SIDE",
        "Side-Seam 2, SIDE",
        "side front, SIDE",
        "sleeve cap, CAP",
        "sleeve head, CAP",
        "front armscye, ARMHOLE",
        "side hem, HEM",
        "centre back, CENTRE_BACK",
        "center front edge, CENTRE_FRONT",
        "centre back neckline, NECKLINE",
        "inside leg, INSEAM",
        "skirt waist, WAIST"
    })
    void theLastWordsOfAnEdgesNameSayWhatItIs(String name, Serves serves) {
        assertEquals(Optional.of(serves), Serves.edgeNamed(name));
    }

    @ParameterizedTest
    @CsvSource({"inside", "side pocket", "Seitennaht", "left", "front edge", "capped", "''"})
    void anyOtherNameSaysNothing(String name) {
        assertEquals(Optional.empty(), Serves.edgeNamed(name));
    }

    @ParameterizedTest
    @CsvSource({
        "body, BODY",
        "left sleeve, SLEEVE",
        "arm length, SLEEVE",
        "body rise, CROTCH_DEPTH",
        "crotch depth, CROTCH_DEPTH",
        "back waist length, WAIST",
        "inside leg, LEG",
        "hip line, HIP"
    })
    void aLineIsReadLikewise(String name, Serves serves) {
        assertEquals(Optional.of(serves), Serves.lineNamed(name));
    }

    @Test
    void wordsThatOnlyTellWhichAreNotStrange() {
        assertEquals(List.of(), Serves.strangeWords("front left side seam 2"));
        assertEquals(List.of("petal"), Serves.strangeWords("petal side"));
        assertEquals(List.of("seitennaht"), Serves.strangeWords("Seitennaht"));
    }
}
