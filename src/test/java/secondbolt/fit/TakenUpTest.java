package secondbolt.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.worksheet.Finding;

/** Darts, pleats and gathers: what they leave of an edge. */
class TakenUpTest {
    private static List<String> mistakes(String features) {
        return WrittenPattern.cm(
                        """
                        pattern:
                          pieces:
                            skirt: {cut: 2, rectangle: [40, 60], %s}
                        """
                                .formatted(features))
                .mistakes();
    }

    /** Taken from 8 to 12 and from 11 to 15: 1 cm twice. */
    @Test
    void refusesPleatsThatLieOnEachOther() {
        List<String> told =
                mistakes("pleats: [{edge: top, at: 10, takes: 4}, {edge: top, at: 13, takes: 4}]");
        assertEquals(1, told.size());
        assertTrue(
                told.get(0)
                        .contains("a pleat at 13 cm of top that lies 1 cm on the pleat at 10 cm"),
                told.get(0));
        assertTrue(told.get(0).contains("a middle from 14 cm on"), told.get(0));
    }

    @Test
    void refusesADartOnAPleatAndOneThatBeginsTooEarly() {
        assertEquals(
                1,
                mistakes(
                                "pleats: [{edge: top, at: 10, takes: 4}], darts: [{edge: top, at:"
                                        + " 12, takes: 3, long: 9}]")
                        .size());
        assertEquals(1, mistakes("darts: [{edge: top, at: 1, takes: 3, long: 9}]").size());
    }

    /** Touching is no overlap; on another edge they do not meet at all. */
    @Test
    void takesThoseThatTouch() {
        assertEquals(
                List.of(),
                mistakes(
                        "pleats: [{edge: top, at: 10, takes: 4}, {edge: top, at: 14, takes: 4},"
                                + " {edge: bottom, at: 12, takes: 4}]"));
    }

    /** Two of 20 cm side by side take up the whole of 40 cm. */
    @Test
    void refusesWhatLeavesNothing() {
        assertEquals(
                1,
                mistakes("pleats: [{edge: top, at: 10, takes: 20}, {edge: top, at: 30, takes: 20}]")
                        .size());
    }

    /** Of 40 cm drawn, 3 cm of allowance are no part of the seam: 38 cm of pleats leave −1 cm. */
    @Test
    void stopsWhereTheSewnEdgeIsUsedUp() {
        WrittenPattern pattern =
                WrittenPattern.cm(
                        """
                        pattern:
                          seam allowance: {of: 1.5, included: true}
                          pieces:
                            skirt: {cut: 2, rectangle: [40, 60], pleats: [{edge: top, at: 20, takes: 38}]}
                        """);
        assertEquals(-10, pattern.afterMm("skirt", "top"), 0.02);
        assertEquals(1, pattern.coded("edge-all-taken-up").size());
    }

    private static final String NECK =
            """
            wearer: {age: adult, measurements: {head: 57}}
            pattern:
              pieces:
                yoke: {cut: 1, rectangle: [60, 20]}
                band: {cut: 1, rectangle: [38, 4]}
              seams: [{join: [yoke.top, band.bottom], %s}]
              openings: [{what: neck, edges: yoke.top, over: head}]
            """;

    /** 60 cm gathered into a band of 38 cm open to 38 cm, and no head of 57 cm passes. */
    @Test
    void countsAGatheredEdgeAsItIsSewn() {
        WrittenPattern pattern = WrittenPattern.cm(NECK.formatted("gather: 1.58"));
        List<String> told = pattern.coded("opening-too-small");
        assertEquals(1, told.size());
        assertTrue(told.get(0).contains("opens to 38 cm"), told.get(0));
        // (57 + 2 − 38) / 2
        assertTrue(told.get(0).contains("a slit of 10.5 cm"), told.get(0));
    }

    @Test
    void countsAnEasedEdgeAsItIsSewn() {
        WrittenPattern pattern = WrittenPattern.cm(NECK.formatted("ease: 22"));
        assertTrue(pattern.coded("opening-too-small").get(0).contains("opens to 38 cm"));
        assertTrue(pattern.told(Finding.Level.WARNING).isEmpty());
    }
}
