package secondbolt.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.shape.Box;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/** A turned drawing is the same drawing, seen with the head to the left. */
class QuarterTurnTest {
    private static Drawing drawing() {
        Drawing inner =
                new Sketch()
                        .line(new Point(1, 2), new Point(3, 5), Pen.CUT)
                        .drawing("inner", new Box(0, 0, 4, 6));
        return new Sketch()
                .fill(Path.circle(new Point(10, 20), 3), Shade.BLACK)
                .label("grain", new Point(5, 6), Lettering.plain(3))
                .add(new Mark.Window(inner, inner.frame(), new Point(30, 40)))
                .drawing("outer", new Box(0, 0, 50, 60));
    }

    @Test
    void swapsTheSides() {
        assertEquals(new Box(-60, 0, 60, 50), QuarterTurn.of(drawing()).frame());
    }

    @Test
    void turnsClockwise() {
        Drawing turned = QuarterTurn.of(drawing());
        Mark.Label label = (Mark.Label) turned.marks().get(1);
        assertEquals(new Point(-6, 5), label.at());
        assertEquals(90, label.lettering().turnDegrees());
        Mark.Window window = (Mark.Window) turned.marks().get(2);
        assertEquals(new Point(-46, 30), window.at());
        assertEquals(new Box(-6, 0, 6, 4), window.view());
    }

    @Test
    void fourTurnsAreNone() {
        Drawing once = drawing();
        Drawing four = QuarterTurn.of(QuarterTurn.of(QuarterTurn.of(QuarterTurn.of(once))));
        assertEquals(lines(once), lines(four));
        assertEquals(once.frame(), four.frame());
    }

    private static List<Mark> lines(Drawing drawing) {
        return drawing.marks().stream().filter(m -> !(m instanceof Mark.Label)).toList();
    }
}
