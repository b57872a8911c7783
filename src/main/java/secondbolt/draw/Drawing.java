package secondbolt.draw;

import java.util.List;
import secondbolt.shape.Box;

/**
 * A display list in millimetres of true size, x to the right and y downwards.
 *
 * @param title what it shows, for readers who cannot see it
 * @param frame the part of the plane that counts; marks may not lie outside
 * @param marks what is drawn, from the bottom up
 */
public record Drawing(String title, Box frame, List<Mark> marks) {
    /** Copies the marks. */
    public Drawing {
        marks = List.copyOf(marks);
    }
}
