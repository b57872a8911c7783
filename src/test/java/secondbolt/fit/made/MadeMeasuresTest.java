package secondbolt.fit.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.fit.WrittenPattern;
import secondbolt.measure.Length;

/** What the pieces come to, worked out by hand beside each. */
class MadeMeasuresTest {
    private static List<String> told(WrittenPattern pattern) {
        MadeMeasures made = MadeMeasures.of(pattern.sound());
        List<Made> all = new ArrayList<>(made.lengths());
        all.addAll(made.girths());
        return all.stream()
                .map(m -> m.what() + ": " + cm(m.before()) + " -> " + cm(m.after()))
                .toList();
    }

    private static String cm(Length length) {
        return String.valueOf(Math.round(length.millimetres()) / 10.0);
    }

    /** Front and back of 25 at the hem, cut as a pair and on the fold: 100 round, 104 widened. */
    private static final String SHIRT =
            """
            pattern:
              finished: {hip: FINISHED}
              pieces:
                front:
                  cut: pair
                  lines: {body: 40, hip: 60}
                  outline: [{start: [0, 8]}, {edge: neckline, to: [7, 0]}, {edge: shoulder, to: [19, 4]}, {edge: armhole, to: [25, 24]}, {edge: Naht, to: [25, 70]}, {edge: hem, to: [0, 70]}, {edge: centre front, to: start}]
                back:
                  cut: 1
                  fold: centre back
                  lines: {body: 40, hip: 60}
                  outline: [{start: [0, 2]}, {edge: neckline, to: [7, 0]}, {edge: shoulder, to: [19, 4]}, {edge: armhole, to: [25, 24]}, {edge: Naht, to: [25, 70]}, {edge: hem, to: [0, 70]}, {edge: centre back, to: start}]
                sleeve:
                  cut: pair
                  lines: {Unterarm: 30}
                  outline: [{start: [0, 12]}, {edge: cap, to: [40, 12], through: [[20, 0]]}, {edge: a, to: [36, 50]}, {edge: wrist, to: [4, 50]}, {edge: b, to: start}]
              seams: [[front.Naht, back.Naht], [sleeve.a, sleeve.b]]
              meaning: {Naht: side, Unterarm: sleeve}
            alterations: [{lengthen: body, by: 2}, {lengthen: Unterarm, by: 3}, {widen: Naht, by: 4}, {widen: [a, b], by: 4}]
            """;

    @Test
    void aShirtIsMeasuredFromTheShoulderAndRoundEachSleeve() {
        List<String> told = told(WrittenPattern.cm(SHIRT.replace("FINISHED", "100")));
        assertEquals(
                List.of(
                        "front, from the shoulder straight down to the hem: 70.0 -> 72.0",
                        "back, from the shoulder straight down to the hem: 70.0 -> 72.0",
                        "back, from the neck along its centre back to the hem: 68.0 -> 70.0",
                        "sleeve, from the top of the cap straight down to the wrist: 50.0 -> 53.0",
                        "round the hem of front, back: 100.0 -> 104.0",
                        "round the hip of front, back: 100.0 -> 104.0",
                        "round the bust, at the underarm, of front, back: 100.0 -> 104.0",
                        "round the wrist of each sleeve: 32.0 -> 34.0"),
                told);
    }

    /** 100 from the pieces: 108 as written differs, 100.5 is as closely as a tape measures. */
    @Test
    void whatIsWrittenIsHeldAgainstThePieces() {
        String told =
                WrittenPattern.cm(SHIRT.replace("FINISHED", "108"))
                        .coded("finished-differs")
                        .get(0);
        assertTrue(told.contains("the hip is 108 cm; the pieces as drawn measure 100 cm"), told);
        assertTrue(told.contains("`finished: {hip: 100}`"), told);
        WrittenPattern same = WrittenPattern.cm(SHIRT.replace("FINISHED", "100.5"));
        assertEquals(List.of(), same.coded("finished-differs"));
    }

    /** A cape of two halves of a ring: half of 2 x 3.1416 x 70 is 219.9, the whole 439.8 round. */
    @Test
    void aCapeAndALegHaveGirths() {
        WrittenPattern cape =
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            cape: {cut: 2, ring: {inner: 10, outer: 70, turn: 180}}
                          seams: [[cape.left, cape.right]]
                        """);
        assertTrue(told(cape).contains("round the hem of cape: 439.8 -> 439.8"), "" + told(cape));
        assertTrue(
                told(cape)
                        .contains(
                                "cape, from the upper edge along its right to the hem: 60.0 -> 60.0"),
                "" + told(cape));
        WrittenPattern trousers =
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            front:
                              cut: pair
                              lines: {leg: 60}
                              outline: [{start: [0, 0]}, {edge: waist, to: [20, 0]}, {edge: crotch, to: [28, 27]}, {edge: inseam, to: [28, 104]}, {edge: hem, to: [0, 104]}, {edge: outseam, to: start}]
                            back:
                              cut: pair
                              lines: {leg: 60}
                              outline: [{start: [0, 0]}, {edge: waist, to: [20, 0]}, {edge: crotch, to: [30, 27]}, {edge: inseam, to: [30, 104]}, {edge: hem, to: [0, 104]}, {edge: outseam, to: start}]
                          seams: [[front.inseam, back.inseam], [front.outseam, back.outseam]]
                        alterations: [{shorten: leg, by: 4}, {widen: inseam, by: 4}]
                        """);
        // 4 cm in all over four edges: 1 an edge, 2 a leg. 28 + 30 = 58 round a leg.
        assertTrue(
                told(trousers).contains("round the hem of each front, back: 58.0 -> 60.0"),
                "" + told(trousers));
        assertTrue(
                told(trousers).contains("round the waist of front, back: 80.0 -> 80.0"),
                "" + told(trousers));
        assertTrue(
                told(trousers)
                        .contains(
                                "front, from the crotch along its inseam to the hem: 77.0 -> 73.0"),
                "" + told(trousers));
    }
}
