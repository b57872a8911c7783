package secondbolt.closure.strip;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.closure.Written;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.fastening.Overlap;
import secondbolt.closure.row.ClosureResult;
import secondbolt.draw.Drawing;
import secondbolt.draw.Mark;
import secondbolt.draw.Pen;
import secondbolt.measure.Length;
import secondbolt.shape.Path;

/** That the small picture shows the front that lies over, and can be read. */
class PlacketPictureTest {
    private static Drawing picture(Overlap.Laps laps, int buttons) {
        ClosureResult result =
                Written.mm(600)
                        .of(
                                Written.buttons(
                                        Length.ofMillimetres(8),
                                        Length.ofMillimetres(2),
                                        Fastening.Holes.LEVEL))
                        .overlap(Written.overlap(Length.ofMillimetres(20), laps))
                        .count(buttons)
                        .from(10, 10)
                        .result();
        return PlacketPicture.of(result);
    }

    /** How far along the page a line drawn with the pen lies in the mean. */
    private static double middleMm(Drawing drawing, Pen pen) {
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Line line && line.pen().equals(pen)) {
                Path.Move from = (Path.Move) line.path().steps().get(0);
                Path.Straight to = (Path.Straight) line.path().steps().get(1);
                return (from.to().yMm() + to.to().yMm()) / 2;
            }
        }
        throw new AssertionError("no line with " + pen);
    }

    private static double holeBelowCentreMm(Overlap.Laps laps) {
        Drawing drawing = picture(laps, 2);
        return middleMm(drawing, Pen.BOLD) - middleMm(drawing, Pen.CENTRE);
    }

    @Test
    void runsLevelHolesAwayFromTheFinishedEdge() {
        assertTrue(holeBelowCentreMm(Overlap.Laps.RIGHT_OVER_LEFT) > 0, "edge above");
        assertTrue(holeBelowCentreMm(Overlap.Laps.LEFT_OVER_RIGHT) < 0, "edge below");
    }

    @Test
    void leavesNumbersOutWhereTheyWouldTouch() {
        List<Double> places = new ArrayList<>();
        for (Mark mark : picture(Overlap.Laps.RIGHT_OVER_LEFT, 60).marks()) {
            if (mark instanceof Mark.Label label && !label.text().contains("cm")) {
                places.add(label.at().xMm());
            }
        }
        assertTrue(places.size() > 10, places.toString());
        for (int i = 1; i < places.size(); i++) {
            assertTrue(places.get(i) - places.get(i - 1) > 5, places.toString());
        }
    }
}
