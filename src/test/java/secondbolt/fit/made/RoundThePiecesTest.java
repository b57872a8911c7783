package secondbolt.fit.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.fit.WrittenPattern;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.project.WrittenProject;

/** Which edges and pieces go round together; the sums are worked out by hand beside each. */
class RoundThePiecesTest {
    private static List<String> told(WrittenPattern pattern, Tape tape) {
        return MadeMeasures.of(pattern.sound()).all().stream()
                .map(
                        m ->
                                m.what()
                                        + ": "
                                        + tape.print(m.before())
                                        + (m.measures().isEmpty() ? "" : " counts"))
                .toList();
    }

    private static void tells(WrittenPattern pattern, Tape tape, String... lines) {
        List<String> told = told(pattern, tape);
        Stream.of(lines).forEach(line -> assertTrue(told.contains(line), line + " in " + told));
    }

    private static void tellsNothingOf(WrittenPattern pattern, String words) {
        List<String> told = told(pattern, Tape.CENTIMETRE);
        told.forEach(line -> assertFalse(line.contains(words), words + " in " + told));
    }

    /** 2 x 13 in below; bib, armhole and side are turned as well. The pocket lies on it. */
    @Test
    void ofAnApronTurnedAllRoundTheLowerEdgeIsTheHem() {
        WrittenPattern apron =
                WrittenPattern.inches(
                        """
                        pattern:
                          pieces:
                            Latz:
                              cut: 1
                              fold: Mitte
                              outline: [{start: [0, 0]}, {edge: oben, to: [5, 0]}, {edge: Armloch, to: [13, 11], through: [[6.5, 7]]}, {edge: Kante, to: [13, 32]}, {edge: unten, to: [0, 32]}, {edge: Mitte, to: start}]
                            Tasche: {cut: 1, rectangle: [7, 8]}
                        hems:
                          oben: {on: [Latz.oben], depth: 1, turned: twice}
                          Kanten: {on: [Latz.Kante, Latz.Armloch], depth: 1/4, turned: narrow}
                          unten: {on: [Latz.unten], depth: 2, turned: twice}
                          Tasche: {on: [Tasche.top], depth: 1, turned: twice}
                        """);
        tells(
                apron,
                Tape.INCH,
                "round the hem of Latz, without what lies beyond the Kante of the Latz: 26 in");
        tellsNothingOf(apron, "Tasche");
    }

    private static final String PANELS =
            """
            pattern:
              pieces:
                Mitte vorn: {cut: 1, fold: left, rectangle: [10, 60]}
                Seite vorn: {cut: pair, outline: [{start: [0, 0]}, {edge: a, to: [14, 0]}, {edge: c, to: [15, 60]}, {edge: Saum, to: [0, 60]}, {edge: b, to: start}]}
                Rücken: {cut: 1, fold: left, rectangle: [22, 60]}
                Beleg: {cut: 2, outline: [{start: [0, 0]}, {edge: a, to: [4, 0]}, {edge: b, to: [4, 60]}, {edge: Saum, to: [0, 60]}, {edge: innen, to: start}]}
              seams: [[Mitte vorn.right, Seite vorn.b], [Seite vorn.c, Rücken.right]MORE]
            hems:
              Saum: {on: [Mitte vorn.bottom, Seite vorn.Saum, Rücken.bottom], depth: 3, turned: twice}
            """;

    /** 2 x 10, 2 x 15 and 2 x 22 are 94, whatever the seams are called. */
    @Test
    void panelsGoRoundBySeamsOfAnyName() {
        String line = "round the hem of Mitte vorn, Seite vorn, Rücken: 94 cm";
        tells(WrittenPattern.cm(PANELS.replace("MORE", "")), Tape.CENTIMETRE, line);
        // A narrow piece on a seam that has met its own lies behind it.
        WrittenPattern faced =
                WrittenPattern.cm(PANELS.replace("MORE", ", [Beleg.b, Seite vorn.c]"));
        tells(faced, Tape.CENTIMETRE, line);
    }

    /** A facing of 6 on a front edge of 26 is not added to it. */
    @Test
    void aFacingIsNotAddedToWhatItLiesBehind() {
        WrittenPattern coat =
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            front: {cut: pair, outline: [{start: [0, 0]}, {edge: shoulder, to: [20, 0]}, {edge: side, to: [26, 70]}, {edge: hem, to: [0, 70]}, {edge: Kante, to: start}]}
                            back: {cut: 1, fold: Mitte, outline: [{start: [0, 0]}, {edge: shoulder, to: [20, 0]}, {edge: side, to: [25, 70]}, {edge: hem, to: [0, 70]}, {edge: Mitte, to: start}]}
                            Beleg: {cut: pair, outline: [{start: [0, 0]}, {edge: oben, to: [6, 0]}, {edge: innen, to: [6, 70]}, {edge: unten, to: [0, 70]}, {edge: Kante, to: start}]}
                          seams: [[front.side, back.side], [front.Kante, Beleg.Kante]]
                        """);
        tells(
                coat,
                Tape.CENTIMETRE,
                "round the hem of front, back, without what lies beyond the Kante of the front:"
                        + " 102 cm");
    }

    /**
     * The same facing with a lining sewn to its inner edge: the lining ends its free side, and adds
     * nothing to the outside.
     */
    @Test
    void aFacingThatTheLiningIsSewnToIsNotAddedEither() {
        WrittenPattern coat =
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            front: {cut: pair, outline: [{start: [0, 0]}, {edge: shoulder, to: [20, 0]}, {edge: side, to: [26, 70]}, {edge: hem, to: [0, 70]}, {edge: Kante, to: start}]}
                            back: {cut: 1, fold: Mitte, outline: [{start: [0, 0]}, {edge: shoulder, to: [20, 0]}, {edge: side, to: [25, 70]}, {edge: hem, to: [0, 70]}, {edge: Mitte, to: start}]}
                            Beleg: {cut: pair, outline: [{start: [0, 0]}, {edge: oben, to: [6, 0]}, {edge: innen, to: [6, 70]}, {edge: unten, to: [0, 70]}, {edge: Kante, to: start}]}
                            Futter: {cut: {lining: pair}, seen: hidden, outline: [{start: [6, 0]}, {edge: oben, to: [20, 0]}, {edge: side, to: [26, 70]}, {edge: unten, to: [6, 70]}, {edge: vorn, to: start}]}
                          seams: [[front.side, back.side], [front.Kante, Beleg.Kante], [Beleg.innen, Futter.vorn]]
                        """);
        tells(
                coat,
                Tape.CENTIMETRE,
                "round the hem of front, back, without what lies beyond the Kante of the front:"
                        + " 102 cm");
    }

    /** 2 x 17 and 2 x 18 are 70; the facings of 4 lie behind the backs at their centre. */
    @Test
    void aFacingAtTheCentreBackIsNotAddedAtTheUnderarm() {
        WrittenPattern smock =
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            front: {cut: 1, fold: centre front, outline: [{start: [0, 6]}, {edge: neckline, to: [6, 0]}, {edge: shoulder, to: [13, 2]}, {edge: armhole, to: [17, 16]}, {edge: side, to: [22, 52]}, {edge: hem, to: [0, 52]}, {edge: centre front, to: start}]}
                            back: {cut: pair, outline: [{start: [0, 2]}, {edge: neckline, to: [7, 0]}, {edge: shoulder, to: [14, 2]}, {edge: armhole, to: [18, 16]}, {edge: side, to: [23, 52]}, {edge: hem, to: [0, 52]}, {edge: centre back, to: start}]}
                            back facing: {cut: pair, outline: [{start: [0, 2]}, {edge: neck, to: [4, 1.4]}, {edge: inner, to: [4, 52]}, {edge: lower, to: [0, 52]}, {edge: centre back, to: start}]}
                          seams: [[front.side, back.side], [front.shoulder, back.shoulder], [back.centre back, back facing.centre back]]
                        """);
        tells(
                smock,
                Tape.CENTIMETRE,
                "round the bust, at the underarm, of front, back, without what lies beyond the"
                        + " centre back of the back: 70 cm");
    }

    /** 2 x 20 and 2 x 22 are 84; the backs meet at an edge of which nothing is told. */
    @Test
    void aBodiceGoesRoundByItsSidesInAnyLanguage() {
        tells(
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            Vorderteil: {cut: 1, fold: Mitte, outline: [{start: [0, 0]}, {edge: Schulter, to: [15, 0], through: [[8, 1]]}, {edge: Seite, to: [20, 40]}, {edge: Taille, to: [0, 40]}, {edge: Mitte, to: start}]}
                            Rückenteil: {cut: pair, outline: [{start: [0, 0]}, {edge: Schulter, to: [15, 0], through: [[8, 1]]}, {edge: Seite, to: [22, 40]}, {edge: Taille, to: [0, 40]}, {edge: Rückenmitte, to: start}]}
                            Bahn: {cut: 6, panel: {top: 14, bottom: 26, along: 60}}
                          seams:
                            - [Vorderteil.Seite, Rückenteil.Seite]
                            - [2 Vorderteil.Taille + 2 Rückenteil.Taille, 6 Bahn.waist]
                            - [Bahn.left, Bahn.right]
                        """),
                Tape.CENTIMETRE,
                "round the waist of Vorderteil, Rückenteil: 84 cm counts",
                "round the waist of Bahn: 84 cm counts");
    }

    /** Legs of which nothing tells that they are legs are not taken for one body of 40 in. */
    @Test
    void legsOfUnknownNamesAreNotAddedUp() {
        WrittenPattern pyjamas =
                WrittenPattern.inches(
                        """
                        pattern:
                          pieces:
                            delantero: {cut: pair, outline: [{start: [2, 0]}, {edge: cintura, to: [12, 0]}, {edge: costado, to: [12, 41]}, {edge: bajo, to: [2, 41]}, {edge: entrepierna, to: [0, 12]}, {edge: tiro, to: start}]}
                            trasero: {cut: pair, outline: [{start: [2, 0]}, {edge: cintura, to: [12, 0]}, {edge: costado, to: [12, 41]}, {edge: bajo, to: [2, 41]}, {edge: entrepierna, to: [0, 12]}, {edge: tiro, to: start}]}
                          seams: [[delantero.costado, trasero.costado], [delantero.entrepierna, trasero.entrepierna]]
                        hems:
                          bajo: {on: [delantero.bajo, trasero.bajo], depth: 1, turned: twice}
                        """);
        tellsNothingOf(pyjamas, "delantero, trasero");
    }

    private static final String CAPE =
            """
            pattern:
              pieces:
                Umhang: {cut: 2, ring: {inner: 10, outer: 70, turn: 180}}
              seams: [[Umhang.left, Umhang.right]]
            """;

    /** 2 x 3.1416 x 10 at the neck and 2 x 3.1416 x 70 below; 60 from one to the other. */
    @Test
    void aCapeHasNoWaist() {
        tells(
                WrittenPattern.cm(CAPE),
                Tape.CENTIMETRE,
                "round the upper edge of Umhang: 62.85 cm",
                "round the hem of Umhang: 439.8 cm",
                "Umhang, from the upper edge along its right to the hem: 60 cm");
        WrittenPattern told = WrittenPattern.cm(CAPE + "  meaning: {waist: neckline}\n");
        tells(told, Tape.CENTIMETRE, "round the hem of Umhang: 439.8 cm");
        tellsNothingOf(told, "waist");
        tells(
                WrittenPattern.cm(CAPE + "  meaning: {waist: waist}\n"),
                Tape.CENTIMETRE,
                "round the waist of Umhang: 62.85 cm counts");
    }

    /** Two tubes, each sewn to itself alone: 4 x 67.5 and 2 x 30. */
    @Test
    void aPieceSewnOnlyToItselfGoesRound() {
        tells(
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            Stufe: {cut: 4, rectangle: [67.5, 26]}
                            Bahn: {cut: 2, outline: [{start: [0, 0]}, {edge: a, to: [28, 0]}, {edge: Naht, to: [30, 60]}, {edge: unten, to: [0, 60]}, {edge: Naht gegenüber, to: start}]}
                          seams: [[Stufe.right, Stufe.left], [Bahn.Naht, Bahn.Naht gegenüber]]
                        """),
                Tape.CENTIMETRE,
                "round the lower edge of Stufe: 270 cm",
                "round the lower edge of Bahn: 60 cm");
    }

    /** A side of 17 and 13 is 30 long; a leg's inside of 20 and 12 is 32. */
    @Test
    void aSideDrawnAsTwoEdgesHasALength() {
        tells(
                WrittenPattern.inches(
                        """
                        pattern:
                          pieces:
                            panel: {cut: 6, outline: [{start: [0, 0]}, {edge: waist, to: [6, 0]}, {edge: Naht, to: [6, 17]}, {edge: Schlitz, to: [6, 30]}, {edge: hem, to: [0, 30]}, {edge: other, to: start}]}
                            leg: {cut: pair, outline: [{start: [0, 0]}, {edge: waist, to: [9, 0]}, {edge: crotch, to: [12, 10]}, {edge: inseam above, to: [12, 30]}, {edge: inseam below, to: [12, 42]}, {edge: hem, to: [0, 42]}, {edge: outseam, to: start}]}
                          seams: [[panel.Naht, panel.other]]
                          meaning: {inseam above: inseam, inseam below: inseam}
                        """),
                Tape.INCH,
                "panel, from the waist along its Naht and Schlitz to the hem: 30 in counts",
                "panel, from the waist along its other to the hem: 30 in counts",
                "leg, from the crotch along its inseam above and inseam below to the hem: 32 in"
                        + " counts");
    }

    /** Round the waist only the six panels go, 6 x 5; round the hem the godets as well. */
    @Test
    void godetsGoRoundAtTheHemAlone() {
        List<String> told =
                told(
                        WrittenPattern.inches(
                                """
                                pattern:
                                  pieces:
                                    panel: {cut: 6, outline: [{start: [0, 0]}, {edge: waist, to: [5, 0]}, {edge: Naht, to: [5, 17]}, {edge: Schlitz, to: [5, 30]}, {edge: hem, to: [0, 30]}, {edge: Schlitz gegenüber, to: [0, 17]}, {edge: Naht gegenüber, to: start}]}
                                    Zwickel: {cut: 6, outline: [{start: [0, 0]}, {edge: b, to: [5, 12]}, {edge: hem, to: [-5, 12]}, {edge: a, to: start}]}
                                  meaning: {Naht: side, Naht gegenüber: side}
                                  seams: [[panel.Naht, panel.Naht gegenüber], [panel.Schlitz, Zwickel.a], [panel.Schlitz gegenüber, Zwickel.b]]
                                """),
                        Tape.INCH);
        assertEquals(
                List.of(
                        "round the waist of panel: 30 in counts",
                        "round the hem of panel, Zwickel: 90 in"),
                told.stream().filter(line -> line.startsWith("round")).toList());
    }

    private static final String WAISTCOAT =
            """
            pattern:
              pieces:
                centre front: {cut: pair, outline: [{start: [0, 9]}, {edge: neckline, to: [3, 0]}, {edge: shoulder, to: [5, 1/2]}, {edge: princess, to: [5, 22]}, {edge: hem, to: [0, 22]}, {edge: front edge, to: start}]}
                side front: {cut: pair, outline: [{start: [0, 3 1/2]}, {edge: shoulder, to: [2, 4]}, {edge: armhole, to: [6, 12], through: [[2.4, 9]]}, {edge: side, to: [6, 25]}, {edge: hem, to: [0, 25]}, {edge: princess, to: start}]}
                side back: {cut: pair, outline: [{start: [0, 1/2]}, {edge: shoulder, to: [2, 1]}, {edge: armhole, to: [5 1/2, 9], through: [[2.6, 6]]}, {edge: side, to: [5 1/2, 22]}, {edge: hem, to: [0, 22]}, {edge: princess, to: start}]}
                centre back: {cut: 1, fold: middle, outline: [{start: [0, 1]}, {edge: neckline, to: [3, 0]}, {edge: shoulder, to: [5, 1/2]}, {edge: princess, to: [4, 22]}, {edge: hem, to: [0, 22]}, {edge: middle, to: start}]}
              seams: [[centre front.princess, side front.princess], [centre back.princess, side back.princess], [side front.side, side back.side]]
              meaning: {middle: centre back, front edge: centre front}
            """;

    /**
     * 13 in above the hem lie the ends of the armholes. There 5 + 6 + 5 1/2 and at the back, whose
     * seam of 21.5232 leans in by 1 in over 21 1/2, 13 along it: 4 + 13 / 21.5232 = 4.604. Twice
     * all of them is 42.208, 42 3/16 on the tape.
     */
    @Test
    void theUnderarmRunsOnOverPanelsWithoutAnArmhole() {
        tells(
                WrittenPattern.inches(WAISTCOAT),
                Tape.INCH,
                "round the bust, at the underarm, of centre front, side front, side back, centre"
                        + " back: "
                        + Tape.INCH.print(Length.ofInches(42 * 16 + 3, 16))
                        + " counts");
    }

    private static String told(String project) {
        WrittenProject written =
                WrittenProject.read(
                                SourceFile.of("project.yaml", "title: T\n" + project),
                                new Mistakes())
                        .orElseThrow();
        return written.workings("t").worksheets().stream()
                .filter(sheet -> sheet.name().equals("fit"))
                .map(sheet -> "" + sheet.figures().asMap().get("finished"))
                .findFirst()
                .orElseThrow();
    }

    /**
     * A shirt's front is 26.2 wide at the underarm and its back 27.8 on the fold: 2 x 26.2 + 2 x
     * 27.8 = 108. Drawn to the finished edges, which lie 1.8 beyond the centre, both fronts lie
     * double there: 108 - 2 x 1.8 = 104.4. Drawn to the centre line they meet, and it is 108.
     */
    @Test
    void whatLiesDoubleAtTheFrontDoesNotGoRound() {
        String shirt =
                """
                units: cm
                pattern:
                  pieces:
                    front: {cut: pair, outline: [{start: [0, 8.6]}, {edge: neckline, to: [5.7, 0], through: [[2.7, 7.3], [4.9, 4]]}, {edge: shoulder, to: [17.7, 4.2]}, {edge: armhole, to: [26.2, 24], through: [[16.8, 9], [17.3, 15], [20.2, 20.9]]}, {edge: side, to: [26.8, 69]}, {edge: hem, to: [0, 73.6]}, {edge: centre front, to: start}]}
                    back: {cut: 1, fold: centre back, outline: [{start: [0, 2.3]}, {edge: neckline, to: [7.7, 0]}, {edge: shoulder, to: [20.5, 4.3]}, {edge: armhole, to: [27.8, 24.6], through: [[19.3, 10], [19.8, 16], [22.4, 21.6]]}, {edge: side, to: [28.4, 69.6]}, {edge: hem, to: [0, 74.6]}, {edge: centre back, to: start}]}
                  seams: [[front.side, back.side]]
                closures:
                  front: {on: front.centre front, extension: 1.8, drawn to: EDGE, buttons: 7, button: {across: 18 ligne, thick: 2.5 mm}, first: 1.5, last: 11, holes: upright, laps: left over right}
                """;
        String finished = told(shirt.replace("EDGE", "finished edge"));
        assertTrue(
                finished.contains(
                        "at the underarm, of front, back, less what laps over at the centre front of"
                                + " the front, measures=bust, drawn_mm=1044.0"),
                finished);
        String centre = told(shirt.replace("EDGE", "centre line"));
        assertTrue(
                centre.contains("underarm, of front, back, measures=bust, drawn_mm=1080.0"),
                centre);
    }

    /** A waistband of 75 with 3 of lap goes 72 round, as the skirt does. */
    @Test
    void theLapOfABandDoesNotGoRound() {
        tells(
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            skirt: {cut: 2, outline: [{start: [0, 0]}, {edge: waist, to: [36, 0]}, {edge: right, to: [40, 60]}, {edge: hem, to: [-4, 60]}, {edge: left, to: start}]}
                            waistband: {cut: 1, outline: [{start: [0, 0]}, {edge: waist, to: [75, 0]}, {edge: end, to: [75, 6]}, {edge: lower, to: [0, 6]}, {edge: other end, to: start}]}
                          seams:
                            - [skirt.left, skirt.right]
                            - {join: [2 skirt.waist, waistband.lower], laps: 3}
                        """),
                Tape.CENTIMETRE,
                "round the waist of waistband, less its lap: 72 cm counts");
    }
}
