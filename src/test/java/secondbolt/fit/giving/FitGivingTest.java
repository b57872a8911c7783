package secondbolt.fit.giving;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.task.Given;

/**
 * What the pattern contributes. Alter before cutting: The New Dressmaker, 1921; the altered paper
 * must lie flat: Central Washington University, costume text, ch. 17.
 */
class FitGivingTest {
    private static final String DRAWN =
            "pattern: {pieces: {front: {cut: pair, rectangle: [30, 60], lines: {body: 30}}}}";

    @Test
    void saysOfPrintedPiecesThatTheyAreAlteredAlready() {
        Given given = Given.of("units: cm", DRAWN, "alterations: [{lengthen: body, by: 3}]");
        assertTrue(
                given.step("alter the paper")
                        .text()
                        .startsWith(
                                "The printed pieces have the alterations: lengthen body by 3 cm"));
    }

    @Test
    void altersPaperThatIsKnownByTape() {
        Given given =
                Given.of(
                        "units: cm",
                        DRAWN.replace(
                                "rectangle: [30, 60]", "box: [30, 60], edges: {side: 60, top: 30}"),
                        "alterations: [{lengthen: body, by: 3}]");
        assertTrue(
                given.step("alter the paper").text().startsWith("Alter your own paper of front"));
        assertTrue(given.step("alter the paper").checks().get(0).contains("lies flat"));
    }

    @Test
    void altersNothingThatNeedNotBe() {
        assertFalse(Given.of("units: cm", DRAWN).names().contains("alter the paper"));
    }

    /** A body's own measure is nobody else's affair; a step stands on sheets that others see. */
    @Test
    void measuresThePiecesWithoutTellingTheBody() {
        Given given = Given.demo("porch-shirt");
        String text = given.step("measure the pieces").text();
        assertTrue(text.contains("bust 111.6 cm"), text);
        assertFalse(text.contains("100 cm"), text);
        assertEquals(
                List.of("check the print", "alter the paper"), given.before("measure the pieces"));
        assertFalse(Given.demo("check-apron").names().contains("measure the pieces"));
    }

    /** One of a front and one of its lining, a pair of each: four. */
    @Test
    void countsTheDartsOfEveryCopy() {
        Given given = Given.demo("blanket-waistcoat");
        assertTrue(given.step("darts").text().startsWith("Sew 4 darts"));
        assertEquals(List.of("cut", "mark"), given.before("darts"));
        assertTrue(Given.demo("porch-shirt").step("pleats").text().contains("4 pleats"));
    }

    /** What is drawn once beside the fold is there twice. */
    @Test
    void countsTheDartsOfBothHalves() {
        Given given =
                Given.of(
                        "units: in",
                        "pattern: {pieces: {dos: {cut: {main: 1, interfacing: 1}, fold: left,"
                                + " rectangle: [12, 24], darts: [{edge: top, at: 4, takes: 1, long:"
                                + " 5}]}}}");
        assertTrue(given.step("darts").text().contains("Sew 2 darts"));
        assertTrue(given.step("darts").text().contains("dos, 2."));
    }
}
