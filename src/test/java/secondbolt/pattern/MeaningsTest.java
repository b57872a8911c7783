package secondbolt.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import secondbolt.fit.WrittenPattern;
import secondbolt.garment.PieceEdge;
import secondbolt.garment.Serves;
import secondbolt.worksheet.Finding.Level;

/** What edges and lines serve in patterns whose names are German or Finnish. */
class MeaningsTest {
    /** A shirt in German, with more of the pattern below it. */
    private static String german(String more) {
        return """
        pattern:
          pieces:
            Vorderteil: {cut: pair, lines: {Rumpf: 40}, outline: [{start: [0, 0]},
              {edge: Schulter, to: [20, 0]},
              {edge: Armloch, to: [26, 22], through: [[20, 9], [22, 18]]},
              {edge: Seitennaht, to: [26, 70]}, {edge: Saum, to: [0, 70]},
              {edge: vordere Mitte, to: start}]}
            Rückenteil: {cut: 1, fold: hintere Mitte, lines: {Rumpf: 40}, outline: [{start: [0, 0]},
              {edge: Schulter, to: [20, 0]},
              {edge: Armausschnitt, to: [26, 22], through: [[20, 9], [22, 18]]},
              {edge: Seite, to: [26, 70]}, {edge: Saum, to: [0, 70]},
              {edge: hintere Mitte, to: start}]}
            Ärmel: {cut: pair, lines: {Unterarm: 30}, outline: [{start: [0, 12]},
              {edge: Kugel, to: [40, 12], through: [[8, 6], [20, 0], [32, 6]]},
              {edge: vorn, to: [34, 50]}, {edge: Bündchen, to: [6, 50]}, {edge: hinten, to: start}]}
          seams:
            - [Vorderteil.Seitennaht, Rückenteil.Seite]
            - [Ärmel.Kugel, Vorderteil.Armloch + Rückenteil.Armausschnitt]
        """
                + more;
    }

    private static Meanings meanings(String text) {
        return WrittenPattern.cm(text).sound().pattern().meanings();
    }

    private static Optional<Meaning> told(Serves serves) {
        return Optional.of(new Meaning(serves, Meaning.How.TOLD));
    }

    private static Optional<Meaning> derived(Serves serves) {
        return Optional.of(new Meaning(serves, Meaning.How.DERIVED));
    }

    @Test
    void nothingIsGuessedOfGermanNames() {
        Meanings none = meanings(german(""));
        assertEquals(Set.of(), none.edges().keySet());
        assertEquals(Set.of(), none.lines().keySet());
    }

    @Test
    void whatTheMakerSaysIsFollowedAlongTheJoins() {
        Meanings all = meanings(german("  meaning: {Seitennaht: side, Kugel: cap, Rumpf: body}\n"));
        assertEquals(told(Serves.SIDE), all.edge("Vorderteil", "Seitennaht"));
        assertEquals(derived(Serves.SIDE), all.edge("Rückenteil", "Seite"));
        assertEquals(told(Serves.CAP), all.edge("Ärmel", "Kugel"));
        assertEquals(derived(Serves.ARMHOLE), all.edge("Vorderteil", "Armloch"));
        assertEquals(derived(Serves.ARMHOLE), all.edge("Rückenteil", "Armausschnitt"));
        assertEquals(told(Serves.BODY), all.line("Rumpf"));
        assertEquals(derived(Serves.SLEEVE), all.line("Unterarm"));
        assertEquals(Optional.empty(), all.edge("Vorderteil", "Schulter"));
    }

    @Test
    void whatBulgesIntoKnownArmholesIsACap() {
        Meanings all = meanings(german("  meaning: {Armloch: armhole, Armausschnitt: armhole}\n"));
        assertEquals(derived(Serves.CAP), all.edge("Ärmel", "Kugel"));
        Meanings half = meanings(german("  meaning: {Armloch: armhole}\n"));
        assertEquals(Optional.empty(), half.edge("Ärmel", "Kugel"));
    }

    private static String finnish(String names, String seams) {
        return """
        pattern:
          pieces:
            etu: {cut: pair, box: [30, 70], edges: {%s: 48, kädentie: 25}}
            taka: {cut: 2, box: [30, 70], edges: {side: 48, kädentie: 25}}
            hiha: {cut: pair, box: [40, 50], edges: {pyöriö: 52}}
            tasku: {cut: 2, box: [15, 48], edges: {suu: 48}}
          seams:
        %s
        """
                .formatted(names, seams);
    }

    @Test
    void aNameInEnglishTellsWhatAFinnishEdgeSewnToItServes() {
        Meanings all = meanings(finnish("sivusauma", "    - [etu.sivusauma, taka.side]"));
        assertEquals(derived(Serves.SIDE), all.edge("etu", "sivusauma"));
        assertEquals(
                Optional.of(new Meaning(Serves.SIDE, Meaning.How.NAMED)), all.edge("taka", "side"));
    }

    @Test
    void aPocketSewnToASideThatIsClosedIsNoSide() {
        Meanings all =
                meanings(
                        finnish(
                                "side",
                                "    - [etu.side, taka.side]\n    - [tasku.suu, taka.side]"));
        assertEquals(Optional.empty(), all.edge("tasku", "suu"));
    }

    @Test
    void anEdgeKnownByTapeIsACapIfItIsEasedIntoTheArmholes() {
        String join = "[hiha.pyöriö, etu.kädentie + taka.kädentie]";
        String meaning = "\n  meaning: {kädentie: armhole}";
        Meanings eased = meanings(finnish("side", "    - {join: " + join + ", ease: 2}" + meaning));
        assertEquals(derived(Serves.CAP), eased.edge("hiha", "pyöriö"));
        Meanings plain = meanings(finnish("side", "    - " + join + meaning));
        assertEquals(Optional.empty(), plain.edge("hiha", "pyöriö"));
    }

    @Test
    void anEdgeAHemTurnsIsAHemUnlessItServesSomethingElse() {
        Pattern pattern =
                WrittenPattern.cm(finnish("side", "    - [etu.side, taka.side]"))
                        .sound()
                        .pattern()
                        .withTurned(
                                Set.of(
                                        new PieceEdge("tasku", "suu"),
                                        new PieceEdge("etu", "side")));
        assertEquals(derived(Serves.HEM), pattern.meanings().edge("tasku", "suu"));
        assertTrue(pattern.meanings().serves("etu", "side", Serves.SIDE));
        assertTrue(pattern.meanings().isHem("etu", "side"));
    }

    @Test
    void aTapedSideOfAnyNameIsCrossedByALine() {
        WrittenPattern shirt =
                WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            etu: {cut: 2, lines: {vartalo: 40}, box: [30, 70], edges: {sivu: 48}}
                          meaning: {sivu: side, vartalo: body}
                        alterations: [{lengthen: vartalo, by: 3}]
                        """);
        assertEquals(510, shirt.afterMm("etu", "sivu"), 1e-6);
    }

    @Test
    void aLongerCapOfAnyNameIsEasedIn() {
        String join = "    - [hiha.pyöriö, etu.kädentie + taka.kädentie]";
        String text = finnish("side", join);
        WrittenPattern drawn = WrittenPattern.cm(text);
        assertEquals(1, drawn.coded("seam-apart-as-drawn").size());
        assertTrue(drawn.told(Level.STOP).get(0).contains("does not meet as drawn"));
        WrittenPattern told = WrittenPattern.cm(text + "  meaning: {pyöriö: cap}\n");
        assertEquals(List.of(), told.told(Level.STOP));
        assertTrue(
                told.coded("seam-cap-longer")
                        .get(0)
                        .startsWith("The cap is longer than its armhole"));
    }

    @Test
    void aWaistOfAnyNameStretches() {
        String skirt =
                """
                pattern:
                  pieces:
                    Rock: {cut: 1, outline: [{start: [0, 0]},
                      {edge: oben, to: [30, 0], through: [[15, 10]]},
                      {edge: rechts, to: [60, 60]}, {edge: Saum, to: [-30, 60]},
                      {edge: links, to: start}]}
                    Bund: {cut: 1, rectangle: [34, 4]}
                  seams: [[Rock.oben, Bund.bottom]]
                """;
        assertEquals(List.of(), WrittenPattern.cm(skirt).told(Level.NOTE));
        List<String> notes =
                WrittenPattern.cm(skirt + "  meaning: {oben: waist, Saum: hem}\n")
                        .coded("waist-stretches");
        assertTrue(notes.get(0).startsWith("The oben of Rock turns by"), notes.toString());
        assertTrue(notes.get(0).contains("Let it hang"), notes.toString());
    }

    @Test
    void slipsAreToldAtTheirPlaces() {
        assertEquals(
                List.of("21 `Seitenaht`, an edge or line that no piece has; `Seitennaht`"),
                WrittenPattern.cm(german("  meaning: {Seitenaht: side}\n")).mistakes());
        String misspelt =
                WrittenPattern.cm(german("  meaning: {Seitennaht: sied}\n")).mistakes().get(0);
        assertTrue(misspelt.startsWith("21 `sied`; `side`"), misspelt);
        List<String> kinds =
                WrittenPattern.cm(german("  meaning: {Seitennaht: sleeve, Rumpf: side}\n"))
                        .mistakes();
        assertEquals(2, kinds.size(), kinds.toString());
        assertTrue(
                kinds.get(0)
                        .startsWith(
                                "21 `sleeve`, a word for a line, for the edge `Seitennaht`; a word"
                                        + " for an edge: `side`, `centre front`"),
                kinds.toString());
        assertTrue(
                kinds.get(1)
                        .startsWith(
                                "21 `side`, a word for an edge, for the line `Rumpf`; a word for a"
                                        + " line: `waist`, `body`, `sleeve`"),
                kinds.toString());
    }
}
