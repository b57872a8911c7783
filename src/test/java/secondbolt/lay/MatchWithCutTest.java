package secondbolt.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;

/**
 * Stripes and checks run on from what is cut already into what is still to be cut: pieces are laid
 * whole repeats from where they would lie beside it. Common practice, no source.
 */
class MatchWithCutTest {
    private static final double ACROSS_MM = 90;
    private static final double ALONG_MM = 120;

    private static final String ONE =
            "  plaid: {size: [150, 220], prewash: done, repeat: {along: 12, across: 9}}\n";
    private static final String TWO =
            """
              plaid: {size: [70, 150], prewash: done, repeat: {along: 12, across: 9, begins: [3, 4]}}
              rest: {size: [90, 150], prewash: done, repeat: {along: 12, across: 9, begins: [1, 7]}}
            """;

    private static String text(String cloth) {
        return "title: Try\nunits: cm\ncloth:\n"
                + cloth
                + """
                lay: {effort: quick, match: [[front.side, back.side]]}
                pattern:
                  seam allowance: {of: 1.5, included: false}
                  pieces:
                    front:
                      cut: pair
                      lines: {body: 30}
                      outline:
                        - {start: [0, 8]}
                        - {edge: neckline, to: [8, 0]}
                        - {edge: shoulder, to: [20, 4]}
                        - {edge: side, to: [26, 60]}
                        - {edge: hem, to: [0, 62]}
                        - {edge: centre front, to: start}
                    back:
                      cut: 1
                      fold: centre back
                      lines: {body: 30}
                      outline:
                        - {start: [0, 2]}
                        - {edge: neckline, to: [8, 0]}
                        - {edge: shoulder, to: [20, 4]}
                        - {edge: side, to: [27, 60]}
                        - {edge: hem, to: [0, 60]}
                        - {edge: centre back, to: start}
                """;
    }

    /** Where the box of each piece begins, from where the pattern of its cloth begins. */
    private static double[] from(LaidPiece laid, StockLay stock) {
        var begins = stock.spreads().get(laid.cloth()).repeat().begins();
        return new double[] {
            laid.box().leftMm() - begins.map(b -> b.xMm()).orElse(0.0),
            laid.box().topMm() - begins.map(b -> b.yMm()).orElse(0.0)
        };
    }

    private static LaidPiece laid(PinnedWork work, String words) {
        return work.stock().laid().stream()
                .filter(l -> l.piece().words().equals(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError(words + " is not laid"));
    }

    private static double off(double by, double every) {
        return Math.abs(by - Math.rint(by / every) * every);
    }

    private static String cut(LaidPiece laid, StockLay stock, double xMm, double yMm) {
        return String.format(
                Locale.ROOT,
                "cut so far:\n  - {piece: %s, cloth: %s, at: [%.4f, %.4f], lies: \"%s\"}\n",
                laid.piece().words(),
                stock.spreads().get(laid.cloth()).name(),
                xMm / 10,
                yMm / 10,
                laid.lies().words());
    }

    /** Each piece in turn is cut where it was, and half a check off: the rest follows it. */
    @ParameterizedTest
    @ValueSource(strings = {ONE, TWO})
    void whatIsStillToBeCutFollowsWhatIsCut(String cloth) {
        PinnedWork before = PinnedWork.of(text(cloth));
        StockLay stock = before.stock();
        assertTrue(stock.fits());
        for (LaidPiece one : stock.laid()) {
            for (double by : new double[] {0, 37}) {
                double x = Math.max(0, one.box().leftMm() - by);
                double y = one.box().topMm() + by;
                double dx = x - one.box().leftMm();
                double dy = y - one.box().topMm();
                PinnedWork after = PinnedWork.of(text(cloth) + cut(one, stock, x, y));
                assertEquals(List.of(), faults(after));
                assertTrue(after.stock().fits());
                assertEquals(List.of(), codes(after, "match"));
                for (LaidPiece other : stock.laid()) {
                    if (other.equals(one)) {
                        continue;
                    }
                    double[] was = from(other, stock);
                    double[] is = from(laid(after, other.piece().words()), after.stock());
                    assertEquals(0, off(is[0] - was[0] - dx, ACROSS_MM), 0.1, one + " " + other);
                    assertEquals(0, off(is[1] - was[1] - dy, ALONG_MM), 0.1, one + " " + other);
                }
            }
        }
    }

    /** One of a pair is cut, and its other hand alone is laid. */
    private static List<String> faults(PinnedWork work) {
        return LaidOnCloth.faults(work.stock()).stream()
                .filter(fault -> !fault.contains(" right and "))
                .toList();
    }

    /** Lengths from the bolt are those of all pieces, which is said once one is cut. */
    @Test
    void lengthsFromTheBoltSayThatTheyCountWhatIsCut() {
        String plan = PinnedWork.of(text(ONE)).written();
        for (String tick : List.of("cut: no", "cut: yes")) {
            PinnedWork work = PinnedWork.of(text(ONE), plan.replaceFirst("cut: no", tick));
            String steps = new LayWords(Tape.CENTIMETRE).yardage(work.lay()).toString();
            assertEquals(
                    tick.endsWith("yes"), steps.contains("already are counted as well"), steps);
        }
    }

    private static List<String> codes(PinnedWork work, String like) {
        return work.workings().findings().stream()
                .map(Finding::code)
                .filter(code -> code.contains(like) && !code.equals("lay-matched"))
                .toList();
    }

    /** Pinned pieces stay while they meet what is cut, each by itself; else they are told. */
    @Test
    void pinnedPiecesStayAsLongAsTheyMeetWhatIsCut() {
        PinnedWork before = PinnedWork.of(text(ONE));
        String plan = before.written().replaceFirst("cut: no", "cut: yes");
        PinnedWork cut = PinnedWork.of(text(ONE), plan);
        assertEquals(List.of(), cut.told());
        assertEquals(before.places().subList(1, 3), cut.places());
        String first = before.stock().laid().get(0).piece().words();
        String off = plan.replaceFirst("at: \\[[0-9.]+, [0-9.]+", "at: [118.3, 152.1");
        PinnedWork moved = PinnedWork.of(text(ONE), off);
        assertEquals(List.of("pin-let-go", "pin-let-go"), moved.codes());
        moved.told()
                .forEach(f -> assertTrue(f.text().contains(first + ", which is cut"), f.text()));
        assertEquals(List.of(), faults(moved));
        String again = moved.written();
        assertEquals(List.of(), PinnedWork.of(text(ONE), again).told(), again);
        String oneOff = plan.replaceFirst("(?s)(.*)at: \\[[0-9.]+, [0-9.]+", "$1at: [60.3, 152.1");
        List<String> told = new ArrayList<>(PinnedWork.of(text(ONE), oneOff).codes());
        assertEquals(List.of("pin-let-go"), told, "the other one stays");
    }

    /** What was cut turned, or in another shape, does not tell where the lines run. */
    @Test
    void whatCannotBeHeldIsTold() {
        PinnedWork before = PinnedWork.of(text(ONE));
        String plan = before.written().replaceFirst("cut: no", "cut: yes");
        String turned = plan.replaceFirst("top up", "top down");
        assertTrue(
                codes(PinnedWork.of(text(ONE), turned), "match").contains("lay-match-cut-apart"));
        String longer = text(ONE) + "alterations: [{lengthen: body, by: 3}]\n";
        List<Finding> told =
                PinnedWork.of(longer, plan).workings().findings().stream()
                        .filter(f -> f.code().equals("lay-match-cut-apart"))
                        .toList();
        assertTrue(!told.isEmpty());
        assertTrue(told.get(0).text().contains("which is cut, and is laid without regard to it"));
    }

    /** Two that are cut and do not meet cannot be mended by what is laid: it is told. */
    @Test
    void piecesThatAreCutAndDoNotMeetAreTold() {
        PinnedWork before = PinnedWork.of(text(ONE));
        String plan = before.written().replace("cut: no", "cut: yes");
        assertEquals(List.of(), codes(PinnedWork.of(text(ONE), plan), "match"));
        String off = plan.replaceFirst("at: \\[[0-9.]+, [0-9.]+", "at: [118.3, 152.1");
        assertTrue(codes(PinnedWork.of(text(ONE), off), "match").contains("cut-not-matching"));
    }
}
