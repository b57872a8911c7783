package secondbolt.hem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.hem.turned.HemEdge;
import secondbolt.hem.turned.HemResult;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;
import secondbolt.worksheet.Worksheet;

class HemFindingsTest {
    private static final String CIRCLE =
            "pattern: {pieces: {skirt: {cut: 4, ring: {inner: 11.94, outer: 77.94, turn: 90}}}}";

    private static List<Finding> findings(String... lines) {
        return Written.of("cm", lines).sheet().findings();
    }

    private static void assertTold(
            List<Finding> findings, String code, Level level, String... words) {
        String told = findings.toString();
        assertTrue(
                findings.stream()
                        .filter(f -> f.code().equals(code) && f.level() == level)
                        .map(f -> f.text() + " " + f.remedy() + " " + f.sources())
                        .anyMatch(text -> List.of(words).stream().allMatch(text::contains)),
                () -> code + ": " + String.join(", ", words) + " is not told in " + told);
    }

    /**
     * Derived: 5 % of R - d is 2d at d = R 0.05 / 2.05, 1.9 cm of 77.94; for 5 cm R must be 205 cm.
     * Baldt, Clothing for Women, 1916: a shaped facing on very wide circular skirts; 4-H bulletin
     * L-87: a quarter inch or a rolled hem on a full circle.
     */
    @Test
    void warnsOfADeepHemOnACircle() {
        List<Finding> all =
                findings(CIRCLE, "hems: {h: {on: [skirt.hem], depth: 5, turned: once}}");
        assertTold(
                all,
                "hem-too-full",
                Level.WARNING,
                "the hem of the skirt 15.7 cm on each of 4, which is 13.7 %",
                "Up to 1.9 cm deep",
                "turned: faced",
                "Baldt",
                "L-87",
                "a radius of 205 cm");
        assertTold(all, "hem-hangs-first", Level.NOTE, "Let it hang 24 h");
    }

    /**
     * A half circle in one piece, 1.2 cm deep: π · 77.94 long, 2 · 1.2 · π = 7.55 cm to draw up; of
     * a quarter of it on the fold half a circle again, half of that on each half.
     */
    @Test
    void saysOfOnePieceHowMuchItDrawsUp() {
        String hem = "hems: {h: {on: [skirt.hem], depth: 1.2, turned: once}}";
        assertTold(
                findings(
                        "pattern: {pieces: {skirt: {cut: 1, ring: {inner: 11.94, outer: 77.94,"
                                + " turn: 180}}}}",
                        hem),
                "hem-eased",
                Level.NOTE,
                "7.55 cm",
                "draw it up by that much, and shrink");
        assertTold(
                findings(
                        "pattern: {pieces: {skirt: {cut: 1, fold: left, ring: {inner: 11.94,"
                                + " outer: 77.94, turn: 90}}}}",
                        hem),
                "hem-eased",
                Level.NOTE,
                "draw it up by that much on each half, and shrink");
    }

    /** At the depth that is named the hem can be eased, and a mark deeper it cannot. */
    @Test
    void namesADepthThatCanBeEased() {
        String hem = "hems: {h: {on: [skirt.hem], depth: %s, turned: once}}";
        HemResult eased = Written.of("cm", CIRCLE, hem.formatted("1.9")).results().get(0);
        assertEquals(1, eased.handled(HemEdge.Handling.EASE).size());
        HemResult full = Written.of("cm", CIRCLE, hem.formatted("1.95")).results().get(0);
        assertEquals(1, full.handled(HemEdge.Handling.TOO_FULL).size());
    }

    /** 15.1 cm over four quarters: 3.75 cm a panel, to the half millimetre. */
    @Test
    void saysHowMuchEachPanelDrawsUp() {
        assertTold(
                findings(CIRCLE, "hems: {h: {on: [skirt.hem], depth: 1.2, turned: once}}"),
                "hem-eased",
                Level.NOTE,
                "the hem of the skirt 3.75 cm on each of 4, which is 3.1 %",
                "Ease-stitch 6 mm from the raw edge");
    }

    /**
     * A half circle of 5 cm is a fold of 15.7 cm; what lies 7 cm inside it is shorter by 7 times π,
     * which is more than there is. Only the piece it belongs to may not be cut.
     */
    @Test
    void stopsWhereNothingIsLeftToSewItTo() {
        List<Finding> stops =
                findings(
                                "pattern: {pieces: {flap: {cut: 1, outline: [{start: [0, 0]},"
                                        + " {edge: top, to: [10, 0]}, {edge: right, to: [10, 30]},"
                                        + " {edge: hem, to: [0, 30], through: [[8.5, 33.5], [5, 35],"
                                        + " [1.5, 33.5]]}, {edge: left, to: start}]}}}",
                                "hems: {h: {on: [flap.hem], depth: 7, turned: once}}")
                        .stream()
                        .filter(Finding::isStop)
                        .toList();
        assertEquals(List.of("hem-no-room"), stops.stream().map(Finding::code).toList());
        Subject about = stops.get(0).about();
        assertEquals("h", about.words());
        assertTrue(about.touches(new Subject.Piece("flap")));
        assertFalse(about.touches(new Subject.Piece("skirt")));
    }

    @Test
    void clipsOrFacesAHollowEdge() {
        assertTold(
                findings(CIRCLE, "hems: {h: {on: [skirt.waist], depth: 1.2, turned: once}}"),
                "hem-hollow",
                Level.CAUTION,
                "shorter than the line",
                "Clip",
                "turned: faced");
    }

    @Test
    void tellsAStraightHemWhoseSidesRunOnFromAHollowOne() {
        List<Finding> told =
                findings(
                        "pattern:",
                        "  seam allowance: {of: 1, included: yes}",
                        "  pieces:",
                        "    manga:",
                        "      cut: pair",
                        "      outline:",
                        "        - {start: [0, 0]}",
                        "        - {edge: copa, to: [40, 0]}",
                        "        - {edge: costura, to: [32, 40]}",
                        "        - {edge: punho, to: [8, 40]}",
                        "        - {edge: outra, to: start}",
                        "hems: {h: {on: [manga.punho], depth: 3, turned: once}}");
        assertTold(
                told, "hem-hollow", Level.CAUTION, "narrows towards the fold", "run straight on");
        assertFalse(told.stream().anyMatch(f -> f.text().contains("edge is hollow")));
    }

    /** Derived: 8 over 40 at both sides, twice 3 cm deep: 1.2 cm an end, 4.8 cm on two sleeves. */
    @Test
    void saysThatATaperedHemFlares() {
        assertTold(
                findings(
                        "pattern:",
                        "  pieces:",
                        "    sleeve:",
                        "      cut: pair",
                        "      outline:",
                        "        - {start: [0, 0]}",
                        "        - {edge: cap, to: [40, 0]}",
                        "        - {edge: right, to: [32, 40]}",
                        "        - {edge: wrist, to: [8, 40]}",
                        "        - {edge: left, to: start}",
                        "hems: {h: {on: [sleeve.wrist], depth: 3, turned: once, for: sleeve}}"),
                "hem-flares",
                Level.CAUTION,
                "1.2 cm at its right and 1.2 cm at its left",
                "too tight by 4.8 cm all round");
    }

    /** Watson, Textiles and Clothing, 1907: wool flannel is not folded twice. */
    @Test
    void doesNotTurnWoolTwice() {
        String[] lines = {
            "cloth: {blanket: {fibre: wool, size: [200, 200]}}",
            "pattern: {pieces: {skirt: {cut: 2, rectangle: [50, 60]}}}",
            "hems: {h: {on: [skirt.bottom], depth: 3, turned: twice}}"
        };
        assertTold(findings(lines), "hem-ridge", Level.CAUTION, "Watson", "turned: blind");
        lines[2] = lines[2].replace("twice", "blind");
        assertEquals(List.of(), findings(lines));
        // A shop's article on cloth weights: over 350 g/m2 is heavy.
        lines[0] = "cloth: {canvas: {fibre: cotton, weight: 400 g/m2, size: [200, 200]}}";
        lines[2] = lines[2].replace("blind", "narrow").replace("depth: 3", "depth: 0.5");
        assertTold(findings(lines), "hem-ridge", Level.CAUTION, "canvas makes a thick ridge");
    }

    @Test
    void mitresWhereTwoHemsMeet() {
        assertTold(
                findings(
                        "pattern: {pieces: {cloth: {cut: 1, rectangle: [50, 60]}}}",
                        "hems: {h: {on: [cloth.bottom, cloth.left], depth: 2, turned: twice}}"),
                "hem-corner",
                Level.NOTE,
                "the bottom edge of the cloth, where it meets the left edge of the cloth",
                "mitre");
    }

    /** A mitre would take 8 of the 3 cm the side has. */
    @Test
    void foldsOneHemOverTheOtherWhereThereIsNoRoomForAMitre() {
        List<Finding> all =
                findings(
                        "pattern: {pieces: {flap: {cut: 1, outline: [{start: [0, 0]}, {edge: top,"
                                + " to: [20, 0]}, {edge: slit, to: [20, 17]}, {edge: step, to: [30,"
                                + " 17]}, {edge: end, to: [30, 20]}, {edge: bottom, to: [0, 20]},"
                                + " {edge: left, to: start}]}}}",
                        "hems: {deep: {on: [flap.bottom], depth: 8, turned: once},"
                                + " shallow: {on: [flap.end], depth: 1, turned: once}}");
        assertTold(
                all,
                "hem-no-room-for-mitre",
                Level.CAUTION,
                "the end of the flap, where it meets the bottom edge of the flap",
                "Turn the shallower hem first");
        assertFalse(all.stream().anyMatch(f -> f.code().equals("hem-corner")), all.toString());
    }

    @Test
    void tellsATapedHemThatALineMayCross() {
        assertTold(
                findings(
                        "pattern: {pieces: {skirt: {cut: 2, lines: {skirt: 30}, box: [50, 60],"
                                + " edges: {hem: 52}}}}",
                        "alterations: [{lengthen: skirt, by: 3}]",
                        "hems: {h: {on: [skirt.hem], depth: 2, turned: twice}}"),
                "hem-fold-open",
                Level.WARNING,
                "the hem of the skirt is not known",
                "stands with the fit");
    }

    @Test
    void leavesOpenWhatATapedPieceDoesNotSay() {
        Worksheet sheet =
                Written.of(
                                "cm",
                                "pattern: {pieces: {skirt: {cut: 2, box: [50, 60], edges: {hem:"
                                        + " 52}}}}",
                                "hems: {h: {on: [skirt.hem], depth: 2, turned: twice, from floor:"
                                        + " 40}}")
                        .sheet();
        assertEquals(1, sheet.open().size());
        assertTrue(sheet.open().get(0).findOut().contains("thread"));
        assertEquals(List.of("hem-level-h"), sheet.sheets().stream().map(s -> s.name()).toList());
        assertTrue(sheet.figures().asMap().toString().contains("fold_mm=520"));
    }

    @Test
    void saysThatAnIncludedAllowanceMustBeMeasured() {
        assertTold(
                findings(
                        "pattern:",
                        "  seam allowance: {of: 1.5, included: true}",
                        "  pieces: {skirt: {cut: 1, rectangle: [50, 60]}}",
                        "hems: {h: {on: [skirt.bottom], depth: 2, turned: twice}}"),
                "hem-allowance-included",
                Level.CAUTION,
                "2.6 cm inside");
    }

    @Test
    void seesAHemThatComesToAPointOnTheFold() {
        String piece =
                "pattern: {pieces: {back: {cut: 1, fold: centre, outline: [{start: [0, 0]}, {edge:"
                        + " top, to: [30, 0]}, {edge: side, to: [30, 60]}, {edge: hem, to: [0, %s]},"
                        + " {edge: centre, to: start}]}}}";
        String hem = "hems: {h: {on: [back.hem], depth: 2, turned: twice}}";
        assertTold(
                findings(piece.formatted("65"), hem),
                "hem-askew-at-fold",
                Level.CAUTION,
                "does not meet the fold of the cloth squarely");
        assertEquals(List.of(), findings(piece.formatted("60"), hem));
    }
}
