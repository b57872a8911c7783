package secondbolt.fit.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import secondbolt.fit.WrittenPattern;
import secondbolt.measure.Tape;

/** Lengths go on over what is sewn on below; the sums are worked out by hand beside each. */
class LengthsOverJoinsTest {
    private static List<String> told(WrittenPattern pattern, Tape tape) {
        return MadeMeasures.of(pattern.sound()).all().stream()
                .map(m -> m.what() + ": " + tape.print(m.before()) + " -> " + tape.print(m.after()))
                .toList();
    }

    private static void tells(WrittenPattern pattern, Tape tape, String... lines) {
        List<String> told = told(pattern, tape);
        Stream.of(lines).forEach(line -> assertTrue(told.contains(line), line + " in " + told));
    }

    /** 42 from the shoulder to the waist and 60 below it are 102; 2 and 3 longer, 107. */
    private static final String DRESS =
            """
            pattern:
              finished: {skirt length: 60, back length: LENGTH}
              pieces:
                Vorderteil:
                  cut: 1
                  fold: Mitte
                  lines: {Rumpf: 30}
                  outline: [{start: [0, 8]}, {edge: Hals, to: [7, 0]}, {edge: Schulter, to: [19, 4]}, {edge: Armloch, to: [24, 22]}, {edge: Naht, to: [22, 42]}, {edge: Taille, to: [0, 42]}, {edge: Mitte, to: start}]
                back:
                  cut: 1
                  fold: centre back
                  lines: {Rumpf: 30}
                  outline: [{start: [0, 2]}, {edge: neckline, to: [7, 0]}, {edge: shoulder, to: [19, 4]}, {edge: armhole, to: [24, 22]}, {edge: side, to: [22, 42]}, {edge: waist, to: [0, 42]}, {edge: centre back, to: start}]
                Rock:
                  cut: 2
                  fold: left
                  lines: {skirt: 30}
                  rectangle: [33, 60]
              seams:
                - [Vorderteil.Naht, back.side]
                - [Rock.right, Rock.right]
                - {join: [2 Rock.top, Vorderteil.Taille + back.waist], gather: 1.5}
              meaning: {Schulter: shoulder, Hals: neckline, Armloch: armhole, Rumpf: body, Taille: waist}
            hems:
              lower: {on: [Rock.bottom], depth: 3, turned: once}
            alterations: [{lengthen: Rumpf, by: 2}, {lengthen: skirt, by: 3}]
            """;

    @Test
    void aDressIsMeasuredOverItsWaistSeam() {
        WrittenPattern dress = WrittenPattern.cm(DRESS.replace("LENGTH", "100"));
        tells(
                dress,
                Tape.CENTIMETRE,
                "Vorderteil, from the shoulder straight down to the waist: 42 cm -> 44 cm",
                "Vorderteil + Rock, from the shoulder straight down to the hem: 102 cm -> 107 cm",
                "back, from the neck along its centre back to the waist: 40 cm -> 42 cm",
                "back + Rock, from the neck along its centre back to the hem: 100 cm -> 105 cm",
                "round the waist of Vorderteil, back: 88 cm -> 88 cm",
                "round the hem of Rock: 132 cm -> 132 cm");
        assertEquals(List.of(), dress.coded("finished-differs"));
    }

    /** 2 + 38 down the back and 60 below are 100; 96 as typed differs. */
    @Test
    void aTypedLengthIsHeldAgainstThePieces() {
        String told =
                WrittenPattern.cm(DRESS.replace("LENGTH", "96")).coded("finished-differs").get(0);
        assertTrue(told.contains("the back length is 96 cm"), told);
        assertTrue(told.contains("the pieces as drawn measure 100 cm"), told);
        assertTrue(told.contains("`finished: {back length: 100}`"), told);
    }

    private static final String SHIRT_SLEEVE =
            """
            pattern:
              finished: {sleeve length: 62}
              pieces:
                sleeve:
                  cut: pair
                  lines: {sleeve: 30}
                  outline: [{start: [0, 12]}, {edge: cap, to: [40, 12], through: [[20, 0]]}, {edge: a, to: [36, 50]}, {edge: wrist, to: [4, 50]}, {edge: b, to: start}]
                  pleats: [{edge: wrist, at: 10, takes: 4}, {edge: wrist, at: 16, takes: 4}]
                cuff: {cut: 2, CUFF}
              seams: [[sleeve.a, sleeve.b], [sleeve.wrist, cuff.top]JOIN]
            alterations: [{lengthen: sleeve, by: 1}]
            """;

    private static WrittenPattern sleeve(String cuff, String join) {
        return WrittenPattern.cm(SHIRT_SLEEVE.replace("CUFF", cuff).replace("JOIN", join));
    }

    /** 50 and a cuff of 12, or of 6 if it is folded: which is not told, so both are. */
    @Test
    void aSleeveGoesOnToTheEdgeOfItsCuff() {
        String open = "rectangle: [24, 12]";
        tells(
                sleeve(open, ""),
                Tape.CENTIMETRE,
                "sleeve + cuff, from the top of the cap straight down to the bottom: 62 cm -> 63"
                        + " cm",
                "sleeve + cuff, from the top of the cap straight down to the bottom, if the cuff"
                        + " is folded in two: 56 cm -> 57 cm");
        assertEquals(List.of(), sleeve(open, "").coded("finished-differs"));
        List<String> folded = told(sleeve(open, ", [sleeve.wrist, cuff.bottom]"), Tape.CENTIMETRE);
        assertTrue(
                folded.contains(
                        "sleeve + cuff, from the top of the cap straight down to the bottom: 56 cm"
                                + " -> 57 cm"),
                "" + folded);
        assertFalse(folded.toString().contains("if the cuff"), "" + folded);
    }

    /** The wrist of the sleeve is sewn to a cuff: it is no wrist to compare. */
    @Test
    void aCuffKnownByTapeIsAsDeepAsItsBox() {
        tells(
                sleeve("box: [24, 12], edges: {top: 24}", ""),
                Tape.CENTIMETRE,
                "sleeve + cuff, from the top of the cap straight down to the lower edge: 62 cm ->"
                        + " 63 cm");
    }

    /**
     * Inside leg 77 - 47 = 30 in, turned-up band 3 in: 33; outside 41 and the band, 44; with a
     * waistband of 2 in, sewn on by both its long edges, 45. The band of 20 in round each leg.
     */
    @Test
    void trousersGoOnToTheirBand() {
        WrittenPattern trousers =
                WrittenPattern.inches(
                        """
                        pattern:
                          finished: {inside leg: 30, outside leg: 45}
                          pieces:
                            front:
                              cut: pair
                              outline: [{start: [0, 0]}, {edge: waist, to: [8, 0]}, {edge: crotch, to: [10, 11]}, {edge: inseam, to: [10, 41]}, {edge: Saum, to: [0, 41]}, {edge: outseam, to: start}]
                            back:
                              cut: pair
                              outline: [{start: [0, 0]}, {edge: waist, to: [8, 0]}, {edge: crotch, to: [10, 11]}, {edge: inseam, to: [10, 41]}, {edge: Saum, to: [0, 41]}, {edge: outseam, to: start}]
                            leg band: {cut: 2, rectangle: [20, 3]}
                            waistband: {cut: 1, rectangle: [32, 2]}
                          seams:
                            - [front.inseam, back.inseam]
                            - [front.outseam, back.outseam]
                            - [front.crotch, back.crotch]
                            - [front.Saum + back.Saum, leg band.top]
                            - [2 front.waist + 2 back.waist, waistband.top]
                            - [2 front.waist + 2 back.waist, waistband.bottom]
                        hems:
                          legs: {on: [leg band.bottom], depth: 1, turned: once}
                        """);
        tells(
                trousers,
                Tape.INCH,
                "front + leg band, from the crotch along its inseam to the hem: 33 in -> 33 in",
                "front + leg band, from the waist along its outseam to the hem: 44 in -> 44 in",
                "waistband + front + leg band, from the top of the band along its outseam to the"
                        + " hem: 45 in -> 45 in");
        List<String> differs = trousers.coded("finished-differs");
        assertEquals(1, differs.size(), "the outside leg agrees: " + differs);
        assertTrue(differs.get(0).contains("the inside leg is 30 in"), differs.get(0));
        assertTrue(differs.get(0).contains("measure 33 in"), differs.get(0));
    }

    /** A yoke of 15, a body of 40 and two tiers of 25 and 20: 100. */
    @Test
    void aYokeABodyAndTiersAddUp() {
        WrittenPattern smock =
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            yoke:
                              cut: 1
                              fold: Mitte
                              outline: [{start: [0, 2]}, {edge: neckline, to: [7, 0]}, {edge: shoulder, to: [18, 3]}, {edge: armhole, to: [18, 15]}, {edge: unten, to: [0, 15]}, {edge: Mitte, to: start}]
                            body: {cut: 1, fold: left, rectangle: [27, 40]}
                            tier one: {cut: 2, rectangle: [80, 25]}
                            tier two: {cut: 3, rectangle: [80, 20]}
                          seams:
                            - {join: [body.top, yoke.unten], gather: 1.5}
                            - [tier one.left, tier one.right]
                            - [tier two.left, tier two.right]
                            - {join: [tier one.top, body.bottom], gather: 2.963}
                            - {join: [3 tier two.top, 2 tier one.bottom], gather: 1.5}
                        hems:
                          lower: {on: [tier two.bottom], depth: 2, turned: twice}
                        """);
        tells(
                smock,
                Tape.CENTIMETRE,
                "yoke + body + tier one + tier two, from the shoulder straight down to the hem: 100"
                        + " cm -> 100 cm",
                "round the lower edge of tier one: 160 cm -> 160 cm",
                "round the hem of tier two: 240 cm -> 240 cm");
    }

    /** With 1.5 in all outlines: a bodice of 42 and a skirt of 60 between their sewing lines. */
    @Test
    void anIncludedAllowanceIsNotMeasured() {
        WrittenPattern dress =
                WrittenPattern.cm(
                        """
                        pattern:
                          seam allowance: {of: 1.5, included: true}
                          pieces:
                            top:
                              cut: 2
                              outline: [{start: [0, 0]}, {edge: shoulder, to: [30, 0]}, {edge: side, to: [30, 45]}, {edge: waist, to: [0, 45]}, {edge: other side, to: start}]
                            skirt: {cut: 2, rectangle: [30, 63]}
                            taped skirt: {cut: 2, box: [30, 63], edges: {top: 27}}
                          seams: [[top.waist, skirt.top]]
                        """);
        tells(
                dress,
                Tape.CENTIMETRE,
                "top, from the shoulder straight down to the waist: 42 cm -> 42 cm",
                "top + skirt, from the shoulder straight down to the bottom: 102 cm -> 102 cm");
    }
}
