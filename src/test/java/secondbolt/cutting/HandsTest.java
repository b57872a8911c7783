package secondbolt.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;

/** Lefts and rights: asked where they are not told, and how else they may be written. */
class HandsTest {
    /** A front with its armhole at the right: turned or not, never its own mirror image. */
    private static final String FRONT =
            "outline: [{start: [0, 0]}, {edge: shoulder, to: [20, 4]}, {edge: armhole, to: [25,"
                    + " 22]}, {edge: side, to: [25, 60]}, {edge: hem, to: [0, 60]}, {edge: centre"
                    + " front, to: start}]";

    private static List<Finding> asked(String cut, String shape) {
        return new CuttingWorksheet(
                        Written.result(
                                "cm",
                                "pattern: {pieces: {piece: {cut: " + cut + ", " + shape + "}}}"),
                        Tape.CENTIMETRE)
                .worksheet().notes().findings().stream()
                        .filter(f -> f.code().equals("cut-one-hand"))
                        .toList();
    }

    @Test
    void asksOfTwoThatAreNoMirrorImages() {
        List<Finding> told = asked("2", FRONT);
        assertEquals(1, told.size());
        assertTrue(told.get(0).remedy().contains("`cut: pair`"), told.get(0).remedy());
        assertTrue(told.get(0).remedy().contains("`cut: 2 alike`"), told.get(0).remedy());
    }

    /** What it advises is taken, and answers it. */
    @Test
    void isAnsweredByWhatItAdvises() {
        for (String cut : List.of("pair", "2 alike", "2 pairs", "{main: pair, lining: 1}", "1")) {
            assertEquals(List.of(), asked(cut, FRONT), cut);
        }
        String remedy = asked("{main: 4, lining: 1}", FRONT).get(0).remedy();
        assertTrue(remedy.contains("`cut: {main: 2 pairs, lining: 1}`"), remedy);
        assertEquals(List.of(), asked("{main: 2 pairs, lining: 1}", FRONT));
    }

    /** Bands, gores and godets are their own mirror image, and so is what is drawn half. */
    @Test
    void asksNothingOfAShapeThatIsItsOwnMirrorImage() {
        assertEquals(List.of(), asked("2", "rectangle: [6, 90]"));
        assertEquals(List.of(), asked("6", "panel: {top: 10, bottom: 30, along: 60}"));
        assertEquals(List.of(), asked("4", "ring: {inner: 12, outer: 70, turn: 90}"));
        assertEquals(List.of(), asked("2", "fold: centre front, " + FRONT));
    }

    /** A dart makes a hand of a rectangle; in its middle it does not. */
    @Test
    void asksOfADartAtOneSide() {
        String dart = "rectangle: [20, 60], darts: [{edge: top, at: %s, takes: 2, long: 9}]";
        assertEquals(1, asked("2", String.format(dart, "6")).size());
        assertEquals(List.of(), asked("2", String.format(dart, "10")));
    }

    @Test
    void asksOfOneKnownByTape() {
        assertEquals(
                1,
                asked("2", "box: [30, 70], edges: {centre front: 65, side: 47, hem: 30}").size());
        assertEquals(List.of(), asked("2", "box: [6, 90], edges: {top: 6}"));
    }

    @Test
    void cutsTwoPairs() {
        var cut =
                Written.result("cm", "pattern: {pieces: {tab: {cut: 2 pairs, " + FRONT + "}}}")
                        .pieces()
                        .get(0);
        assertEquals(4, cut.copies());
        assertEquals("cut 2 pairs of the main cloth", cut.instruction());
    }

    @Test
    void answersOtherWaysOfWritingWithTheRightLine() {
        assertEquals(
                List.of(
                        "`1 on fold` | `cut: 1`, and the edge that lies on the fold under a key of"
                                + " its own, such as `fold: centre back`; the piece is then drawn"
                                + " half"),
                Written.answers(
                        "pattern: {pieces: {back: {cut: 1 on fold, rectangle: [20, 60]}}}"));
        assertTrue(
                Written.answers(
                                "pattern: {pieces: {back: {cut: 2 on the fold, rectangle: [20,"
                                        + " 6]}}}")
                        .get(0)
                        .contains("`cut: 2`"));
        assertTrue(
                Written.answers("pattern: {pieces: {back: {cut: on the fold, rectangle: [20, 6]}}}")
                        .get(0)
                        .contains("`cut: 1`"));
        assertEquals(
                List.of("`pairs` | `cut: pair` for one pair, or so many as in `cut: 2 pairs`"),
                Written.answers("pattern: {pieces: {back: {cut: pairs, rectangle: [20, 60]}}}"));
    }
}
