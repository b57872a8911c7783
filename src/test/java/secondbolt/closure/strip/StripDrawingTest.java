package secondbolt.closure.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import secondbolt.closure.Written;
import secondbolt.closure.fastening.Overlap;
import secondbolt.closure.row.ClosureResult;
import secondbolt.draw.Drawing;
import secondbolt.draw.Mark;
import secondbolt.draw.Pen;
import secondbolt.measure.Length;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * Where marks stand beside the finished edges of both strips. Distances derived: with rows 12 cm
 * apart the row that works lies 6 cm outside the centre line on the side above, and 6 cm inside it
 * on the side below, so that both come together when the garment is closed.
 */
class StripDrawingTest {
    private static final double SAME = 1e-6;

    private static Drawing strips(Overlap.Laps laps, Overlap.Worn worn) {
        Overlap overlap =
                new Overlap(
                        Length.ofMillimetres(100),
                        laps,
                        worn,
                        Optional.of(Length.ofMillimetres(120)),
                        false,
                        Optional.empty());
        ClosureResult result = Written.mm(400).count(3).from(20, 20).overlap(overlap).result();
        return StripDrawing.of(result);
    }

    private static List<Path> lines(Drawing drawing, Predicate<Pen> pen) {
        return drawing.marks().stream()
                .filter(Mark.Line.class::isInstance)
                .map(Mark.Line.class::cast)
                .filter(line -> pen.test(line.pen()))
                .map(Mark.Line::path)
                .toList();
    }

    private static Point start(Path path) {
        return ((Path.Move) path.steps().get(0)).to();
    }

    /** The two finished edges: heavy and upright, the left one first. */
    private static List<Double> edges(Drawing drawing) {
        return lines(drawing, Pen.CUT::equals).stream()
                .filter(path -> isUpright(path))
                .map(path -> start(path).xMm())
                .sorted()
                .toList();
    }

    private static boolean isUpright(Path path) {
        Point end = ((Path.Straight) path.steps().get(1)).to();
        return Math.abs(end.xMm() - start(path).xMm()) < SAME;
    }

    private static double holeMm(Drawing drawing) {
        return start(lines(drawing, Pen.BOLD::equals).get(0)).xMm();
    }

    /** Round marks: buttons, on the right of a middle line those of the right strip. */
    private static List<Double> buttonsRightOf(Drawing drawing, double middleMm) {
        double radiusMm = 6.35;
        return lines(drawing, Pen.FINE::equals).stream()
                .filter(path -> path.steps().size() > 4)
                .map(path -> start(path).xMm() - radiusMm)
                .filter(x -> x > middleMm)
                .distinct()
                .toList();
    }

    @Test
    void putsTheWorkingRowsTogetherWhenClosed() {
        Drawing drawing = strips(Overlap.Laps.RIGHT_OVER_LEFT, Overlap.Worn.FRONT);
        List<Double> edges = edges(drawing);
        assertEquals(2, edges.size());
        assertEquals(40, edges.get(0) - holeMm(drawing), SAME);
        List<Double> buttons = buttonsRightOf(drawing, edges.get(0));
        assertEquals(1, buttons.size());
        assertEquals(160, buttons.get(0) - edges.get(1), SAME);
    }

    @Test
    void standsTheWearersRightFrontAndLeftBackOnTheLeft() {
        Drawing front = strips(Overlap.Laps.LEFT_OVER_RIGHT, Overlap.Worn.FRONT);
        assertEquals(40, holeMm(front) - edges(front).get(1), SAME);
        Drawing back = strips(Overlap.Laps.LEFT_OVER_RIGHT, Overlap.Worn.BACK);
        assertEquals(40, edges(back).get(0) - holeMm(back), SAME);
    }
}
