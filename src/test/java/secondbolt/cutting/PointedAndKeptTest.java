package secondbolt.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.cutting.line.CutPiece;
import secondbolt.cutting.line.SewingLine;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/** Cutting lines of pieces that come to a point, and of edges that are kept as they are. */
class PointedAndKeptTest {
    private static CutPiece piece(String units, String allowance, String piece) {
        return Written.result(
                        units,
                        "pattern:",
                        "  seam allowance: " + allowance,
                        "  pieces: {piece: {cut: 4, " + piece + "}}")
                .pieces()
                .get(0);
    }

    /**
     * A sleeve of 14 in over a wrist of 8 in, 20 in long: each side leans in by 3 in, 8.5 degrees.
     * Square to it, its allowance of ⅝ in would end ⅝ · 3/√409 = 0.093 in below the wrist, which
     * has none: the cloth ends there.
     */
    @Test
    void endsASidesAllowanceAtAKeptEdge() {
        CutPiece sleeve =
                piece(
                        "in",
                        "{of: 5/8, included: false}",
                        "panel: {top: 14, bottom: 8, along: 20}, allowance: {hem: 0}");
        assertEquals(20 * 25.4, sleeve.cut().box().bottomMm(), 1e-6);
        double aside = 0.625 * 25.4 * Math.sqrt(409) / 20;
        List<Point> low =
                sleeve.cut().corners().stream().filter(p -> p.yMm() > 20 * 25.4 - 1e-6).toList();
        double left = low.stream().mapToDouble(Point::xMm).min().orElseThrow();
        double right = low.stream().mapToDouble(Point::xMm).max().orElseThrow();
        assertEquals(8 * 25.4 + 2 * aside, right - left, 1e-3);
    }

    /** The same side widening to its hem: it ran on to the hem's line before, and does. */
    @Test
    void meetsAKeptEdgeOfAWideningPiece() {
        CutPiece flared =
                piece(
                        "cm",
                        "{of: 1, included: false}",
                        "panel: {top: 10, bottom: 24, along: 60}, allowance: {hem: 0}");
        assertEquals(600, flared.cut().box().bottomMm(), 1e-6);
        assertEquals(240 + 2 * 10 * Math.hypot(1, 70.0 / 600), flared.cut().box().widthMm(), 1e-3);
    }

    /**
     * A godet of 40 degrees with seams of 1.5 cm: its sides' cutting lines meet 1.5 / sin 20° =
     * 4.39 cm above the tip.
     */
    @Test
    void cutsAGodetToItsPoint() {
        CutPiece godet =
                piece(
                        "cm",
                        "{of: 1.5, included: false}",
                        "ring: {inner: 0.2, outer: 40, turn: 40}");
        assertTrue(godet.crossing().isEmpty());
        assertEquals(-15 / Math.sin(Math.toRadians(20)), godet.cut().box().topMm(), 0.05);
        assertEquals(415, godet.cut().box().bottomMm(), 0.1);
    }

    /**
     * Sharper than the mitre's limit: cut off 4 times the allowance above the tip; blunt: straight.
     */
    @Test
    void cutsEveryGodet() {
        for (int turn : List.of(12, 20, 60, 90, 150, 180, 200, 270, 330)) {
            for (String inner : List.of("0.1", "0.2", "1")) {
                CutPiece godet =
                        piece(
                                "cm",
                                "{of: 1.5, included: false}",
                                "ring: {inner: " + inner + ", outer: 40, turn: " + turn + "}");
                assertTrue(godet.crossing().isEmpty(), turn + " degrees, " + inner);
                assertTrue(godet.cut().box().topMm() > -15 * 4.2 - 400, "reach");
            }
        }
        assertEquals(
                -60,
                piece("cm", "{of: 1.5, included: false}", "ring: {inner: 0.1, outer: 40, turn: 12}")
                        .cut()
                        .box()
                        .topMm(),
                1);
    }

    /** Inside an outline that includes it, the sewn sides meet as far below the tip. */
    @Test
    void sewsAnIncludedGodetToItsPoint() {
        CutPiece godet =
                piece("cm", "{of: 1.5, included: true}", "ring: {inner: 0.2, outer: 40, turn: 40}");
        assertTrue(godet.crossing().isEmpty());
        double top =
                SewingLine.of(godet).stream()
                        .flatMap(path -> path.steps().stream())
                        .mapToDouble(
                                step ->
                                        step instanceof Path.Move move
                                                ? move.to().yMm()
                                                : ((Path.Straight) step).to().yMm())
                        .min()
                        .orElseThrow();
        assertEquals(15 / Math.sin(Math.toRadians(20)), top, 0.05);
    }
}
