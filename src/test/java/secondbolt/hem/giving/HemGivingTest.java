package secondbolt.hem.giving;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.task.Given;
import secondbolt.task.Wait;

/**
 * When the turn of a hem comes. Last on skirts: K. H. Watson, Textiles and Clothing, 1907; before
 * the band on a straight gathered apron: Text-Book on Domestic Art. Hanging: 24 hours at least (a
 * machine maker's how-to), two or three days for a circular skirt (The New Dressmaker, 1921).
 */
class HemGivingTest {
    private static final String APRON =
            """
            pattern:
              seam allowance: {of: 1.5, included: false}
              pieces:
                Schürze: {cut: 1, rectangle: [150, 60]}
                Bund: {cut: 1, rectangle: [75, 8]}
              seams: [{join: [Schürze.top, Bund.bottom], gather: 2}]
            hems:
              Saum: {on: [Schürze.bottom], depth: 5, turned: twice}
            """;

    private static Given apron(String more) {
        return Given.of("units: cm", APRON + more);
    }

    @Test
    void hangsLevelsAndThenHemsASkirtOfGores() {
        Given given = Given.demo("gore-skirt");
        assertTrue(given.names().containsAll(List.of("hang", "level", "hem")));
        assertTrue(given.before("hang").containsAll(List.of("assemble", "band")));
        assertTrue(given.before("level").containsAll(List.of("hang", "fit on")));
        assertTrue(given.before("hem").containsAll(List.of("level", "assemble", "band", "gather")));
        assertTrue(given.step("level").text().contains("the fold 32 cm (12⅝ in) above the floor"));
        assertTrue(given.step("level").checks().get(1).contains("shoes"));
    }

    @Test
    void tellsBothPublishedWaits() {
        Wait wait = Given.demo("gore-skirt").step("hang").pause().orElseThrow();
        assertEquals(Duration.ofHours(24), wait.least());
        assertEquals(Duration.ofHours(72), wait.most());
        assertTrue(wait.why().contains("machine maker's how-to"));
        assertTrue(wait.why().contains("The New Dressmaker, 1921"));
    }

    /** Heavy is over 350 g/m² (a shop's article on cloth weights). */
    @ParameterizedTest
    @CsvSource({"360 g/m2,48,72", "210 g/m2,24,72", "unknown,24,72"})
    void letsHeavyClothHangLonger(String weight, int least, int most) {
        Wait wait =
                Given.of(
                                "units: cm",
                                "cloth: {wool: {size: unknown, fibre: wool, weight: "
                                        + weight
                                        + "}}",
                                "pattern: {pieces: {Rock: {cut: 2, ring: {inner: 24, outer: 90,"
                                        + " turn: 90}}}}",
                                "hems: {Saum: {on: [Rock.hem], depth: 1, turned: once}}")
                        .step("hang")
                        .pause()
                        .orElseThrow();
        assertEquals(Duration.ofHours(least), wait.least());
        assertEquals(Duration.ofHours(most), wait.most());
    }

    @Test
    void waitsAsLongAsTheMakerSays() {
        Wait wait =
                Given.of(
                                "units: cm",
                                "pattern: {pieces: {skirt: {cut: 2, rectangle: [50, 60]}}}",
                                "hems: {hem: {on: [skirt.bottom], depth: 5, turned: once, hang: {for:"
                                        + " 36 h}}}")
                        .step("hang")
                        .pause()
                        .orElseThrow();
        assertEquals(Duration.ofHours(36), wait.least());
        assertEquals(Duration.ofHours(36), wait.most());
        assertTrue(wait.why().contains("you let hem hang"));
    }

    /**
     * Six panels drawn with straight hems, each leaning out by atan(10/60) = 9.46 degrees at both
     * sides: 113.5 degrees all round, more than a quarter of a circle; leaning by 5 they come to
     * 57.2 (derived).
     */
    @Test
    void hangsPanelsThatFlareThoughTheirHemsAreDrawnStraight() {
        String gore =
                "pattern: {pieces: {gore: {cut: 6, outline: [{start: [10, 0]}, {edge: top, to: [20,"
                        + " 0]}, {edge: right, to: [30, 60]}, {edge: hem, to: [0, 60]}, {edge: left,"
                        + " to: start}]}}}";
        String hem = "hems: {hem: {on: [gore.hem], depth: 2, turned: once}}";
        assertTrue(Given.of("units: cm", gore, hem).names().contains("hang"));
        String slim = gore.replace("[30, 60]", "[25, 60]").replace("[0, 60]", "[5, 60]");
        assertFalse(Given.of("units: cm", slim, hem).names().contains("hang"));
    }

    @Test
    void hemsAStraightApronBeforeItIsGathered() {
        Given given = apron("");
        assertFalse(given.names().contains("hang"));
        assertEquals(List.of("cut", "neaten"), given.before("hem"));
        assertTrue(given.step("hem").text().contains("Before it is gathered"));
    }

    @Test
    void hemsWhatIsMeasuredOnTheWearerLastThoughItIsStraightAndGathered() {
        Given given = Given.of("units: cm", APRON.replace("twice}", "twice, for: skirt}"));
        assertTrue(given.before("hem").contains("band"));
        assertTrue(
                given.step("hem").follows().stream()
                        .anyMatch(f -> f.why().contains("judged on the wearer")));
    }

    @Test
    void namesTheHemsThatDifferInTheirTurn() {
        Given given =
                Given.of(
                        "units: cm",
                        APRON.replace(
                                        "Bund: {cut: 1",
                                        "Ärmel: {cut: pair, ring: {inner: 20, outer: 40, turn: 30}}\n"
                                                + "    Bund: {cut: 1")
                                .stripTrailing(),
                        "  Ärmelsaum: {on: [Ärmel.hem], depth: 1, turned: narrow}");
        assertTrue(given.names().containsAll(List.of("hem Saum", "hem")), given.names().toString());
        assertTrue(given.before("hem").contains("band"));
        assertFalse(given.before("hem Saum").contains("band"));
    }

    @Test
    void levelsACurtainAtItsRail() {
        Given given =
                Given.of(
                        "units: in",
                        "pattern: {pieces: {drop: {cut: 2, rectangle: [50, 84]}}}",
                        "hems: {hem: {on: [drop.bottom], depth: 3, turned: twice, for: curtain, from"
                                + " floor: 1/2}}");
        assertTrue(given.step("level").text().contains("at its own rail"));
        assertEquals(List.of(), given.step("level").checks());
    }

    @Test
    void takesOfAPieceKnownByTapeThatItsShapeIsNotKnown() {
        Given given =
                Given.of(
                        "units: cm",
                        APRON.replace(
                                "rectangle: [150, 60]",
                                "box: [150, 60], edges: {bottom: 150, top: 150}"));
        assertTrue(
                given.step("hem").follows().stream()
                        .anyMatch(f -> f.why().contains("its shape is not known")));
    }
}
