package secondbolt.fit.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import secondbolt.fit.WrittenPattern;
import secondbolt.measure.Tape;

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
}
