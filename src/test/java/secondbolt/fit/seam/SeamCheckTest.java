package secondbolt.fit.seam;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import secondbolt.fit.WrittenPattern;
import secondbolt.garment.PieceEdge;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Subject;

/** Tolerance of 1 mm or 1/16 in for paper seams: common practice, no public standard. */
class SeamCheckTest {
    private static WrittenPattern joined(double first, double second, String more) {
        String seam = "{join: [sleeve.cap, body.armhole]" + more + "}";
        return WrittenPattern.cm(
                "pattern:\n  pieces:\n"
                        + "    sleeve: {cut: pair, box: [60, 60], edges: {cap: "
                        + first
                        + "}}\n"
                        + "    body: {cut: pair, box: [60, 60], edges: {armhole: "
                        + second
                        + "}}\n"
                        + "  seams: ["
                        + seam
                        + "]\n");
    }

    private static SeamCheck check(WrittenPattern pattern) {
        return pattern.sound().seams().get(0);
    }

    /** Back shoulder a quarter to half an inch longer, eased in: from memory. */
    @Test
    void anEasedBackShoulderMeets() {
        WrittenPattern eased = joined(13.5, 12.7, ", ease: 0.8");
        assertTrue(check(eased).meets());
        assertEquals(List.of(), eased.findings());
    }

    @Test
    void gathersOfOneAndAHalfMeet() {
        WrittenPattern gathered = joined(90, 60, ", gather: 1.5");
        assertTrue(check(gathered).meets());
        assertEquals(List.of(), gathered.findings());
    }

    @Test
    void aMillimetreIsAllowedAndTwoAreNot() {
        assertTrue(check(joined(40.1, 40, "")).meets());
        assertTrue(!check(joined(40.2, 40, "")).meets());
    }

    @Test
    void aLongerCapIsNoAlarm() {
        WrittenPattern longer = joined(50, 47.5, "");
        assertEquals(List.of(), longer.told(Finding.Level.STOP));
        assertEquals(List.of(), longer.told(Finding.Level.WARNING));
        assertTrue(longer.coded("seam-cap-longer").get(0).contains("`ease: 2.5`"));
    }

    /** 2 cm are written and 2.5 are there: told as such, and the line that makes it right. */
    @Test
    void anEaseThatIsNotMetIsToldAsSuch() {
        WrittenPattern longer = joined(50, 47.5, ", ease: 2");
        String told = longer.coded("seam-ease-not-met").get(0);
        assertTrue(told.startsWith("The ease written on this join is not met"), told);
        assertTrue(told.contains("`ease: 2.5`"), told);
        assertEquals(1, longer.told(Finding.Level.WARNING).size());
        assertEquals(List.of(), joined(50, 47.5, ", ease: 2.5").findings());
        String less = joined(50, 48.5, ", ease: 2").coded("seam-ease-not-met").get(0);
        assertTrue(less.contains("`ease: 1.5`"), less);
    }

    /**
     * Up to 1 1/2 in (38 mm) a sleeve is usual, by pattern makers' articles on cap ease; twice that
     * is more than can be eased in: common practice, no source.
     */
    @Test
    void aCapTooLongWarnsAndOneFarTooLongStops() {
        String usual = joined(51.3, 47.5, "").coded("seam-cap-longer").get(0);
        assertTrue(usual.contains("Usual is 1.2 cm to 3.8 cm a sleeve"), usual);
        String much = joined(52, 47.5, "").coded("seam-cap-too-long").get(0);
        assertTrue(much.contains("`ease: 4.5`"), much);
        // 68 over 50 is 1.36.
        WrittenPattern far = joined(68, 50, "");
        assertEquals(1, far.told(Finding.Level.STOP).size());
        String told = far.coded("seam-cap-far-too-long").get(0);
        assertTrue(told.contains("gather: 1.36}`"), told);
        assertEquals(List.of(), joined(68, 50, ", gather: 1.36").findings());
        assertEquals(1, joined(68, 50, ", ease: 2").coded("seam-ease-not-met").size());
        assertEquals(1, joined(68, 50, ", ease: 18").coded("seam-cap-ease-much").size());
    }

    /** Written with the armhole first, the cap is the longer all the same. */
    @Test
    void aCapWrittenSecondIsEasedAsWell() {
        String text =
                """
                pattern:
                  pieces:
                    sleeve: {cut: pair, box: [60, 60], edges: {cap: 50}}
                    body: {cut: pair, box: [60, 60], edges: {armhole: 48}}
                  seams: [JOIN]
                """;
        WrittenPattern second =
                WrittenPattern.cm(text.replace("JOIN", "[2 body.armhole, 2 sleeve.cap]"));
        assertEquals(List.of(), second.told(Finding.Level.STOP));
        String told = second.coded("seam-cap-longer").get(0);
        String join = "{join: [2 sleeve.cap, 2 body.armhole], ease: 4}";
        assertTrue(told.contains("`" + join + "`"), told);
        assertEquals(List.of(), WrittenPattern.cm(text.replace("JOIN", join)).findings());
    }

    @Test
    void aShorterCapStops() {
        WrittenPattern shorter = joined(47, 47.5, "");
        assertEquals(1, shorter.told(Finding.Level.STOP).size());
        assertEquals(1, shorter.coded("seam-apart-as-drawn").size());
    }

    @Test
    void anOpeningTooSmallForTheHeadStopsWithTheSlit() {
        WrittenPattern neck =
                WrittenPattern.cm(
                        """
                        wearer: {measurements: {head: 57}}
                        pattern:
                          pieces:
                            front: {cut: 1, box: [50, 60], edges: {neckline: 14}}
                            back: {cut: 1, box: [50, 60], edges: {neckline: 10}}
                          openings: [{what: neck, edges: 2 front.neckline + 2 back.neckline, over: head}]
                        """);
        // Round it is 48 cm; the head and 2 cm are 59, so a slit of 5.5 cm opens it by 11.
        assertEquals(1, neck.told(Finding.Level.STOP).size());
        String told = neck.coded("opening-too-small").get(0);
        assertTrue(told.contains("slit of 5.5 cm"), told);
        assertEquals(
                new Subject.Edges(
                        "neck",
                        Set.of(
                                new PieceEdge("front", "neckline"),
                                new PieceEdge("back", "neckline"))),
                neck.about("opening-too-small"));
    }

    /** The amount is rounded once, and each tape shows the true one: 38.1 mm is 1½ in. */
    @Test
    void theAmountIsRoundedOnce() {
        String told = joined(43.69, 47.5, "").told(Finding.Level.STOP).get(0);
        assertTrue(told.contains("too short by 38 mm (1½ in)"), told);
    }

    @Test
    void aSideWithEaseIsToldWhatItShouldBe() {
        String told = joined(40.5, 40, ", ease: 1").told(Finding.Level.WARNING).get(0);
        assertTrue(
                told.contains(
                        "the cap of the sleeve is 40.5 cm; with 10 mm of ease for the armhole of the body of 40 cm it"
                                + " should be 41 cm: too short by 5 mm"),
                told);
    }

    @Test
    void easeAndGatherTogetherAreOneMistake() {
        List<String> mistakes = joined(60, 40, ", ease: 1, gather: 1.5").mistakes();
        assertEquals(1, mistakes.size(), mistakes.toString());
        assertTrue(mistakes.get(0).contains("`ease` and `gather` on one join"));
    }

    /** What may not be cut are all edges of the seam, on whichever piece they are. */
    @Test
    void aSeamThatDoesNotMeetStopsAllItsEdges() {
        Subject seam = joined(47, 47.5, "").about("seam-apart-as-drawn");
        assertEquals("the cap of the sleeve to the armhole of the body", seam.words());
        for (String piece : List.of("sleeve", "body")) {
            assertTrue(seam.touches(new Subject.Piece(piece)), piece);
        }
        assertFalse(seam.touches(new Subject.Piece("collar")));
    }
}
