package secondbolt.closure;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.draw.Drawing;
import secondbolt.draw.Mark;
import secondbolt.draw.Pen;
import secondbolt.file.Answer;
import secondbolt.file.source.Place;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Path;

/** That the small picture shows the front that lies over, and can be read. */
class PlacketPictureTest {
    private static final Place NOWHERE = Place.beginningOf("none");

    private static Drawing picture(Closure.Laps laps, int buttons) {
        Closure closure =
                new Closure(
                        new Placket.ByTape(Answer.known(Length.ofMillimetres(600))),
                        Length.ofMillimetres(20),
                        buttons,
                        new Button(
                                Button.Shape.FLAT,
                                Optional.of(Length.ofMillimetres(8)),
                                Optional.of(Length.ofMillimetres(2)),
                                Optional.empty()),
                        Length.ofMillimetres(10),
                        Optional.of(Length.ofMillimetres(10)),
                        Closure.Holes.LEVEL,
                        laps,
                        Optional.empty(),
                        new Closure.Places(NOWHERE, NOWHERE, NOWHERE));
        return PlacketPicture.of(
                ClosureCalculation.work(
                        "front", closure, Length.ofMillimetres(600), Tape.CENTIMETRE),
                Tape.CENTIMETRE);
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

    private static double holeBelowCentreMm(Closure.Laps laps) {
        Drawing drawing = picture(laps, 2);
        return middleMm(drawing, Pen.BOLD) - middleMm(drawing, Pen.CENTRE);
    }

    @Test
    void runsLevelHolesAwayFromTheFinishedEdge() {
        assertTrue(holeBelowCentreMm(Closure.Laps.RIGHT_OVER_LEFT) > 0, "edge above");
        assertTrue(holeBelowCentreMm(Closure.Laps.LEFT_OVER_RIGHT) < 0, "edge below");
    }

    @Test
    void leavesNumbersOutWhereTheyWouldTouch() {
        List<Double> places = new ArrayList<>();
        for (Mark mark : picture(Closure.Laps.RIGHT_OVER_LEFT, 60).marks()) {
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
