package secondbolt.lay.search;

import java.util.List;
import secondbolt.shape.Outline;

/**
 * A shape to be laid, once.
 *
 * @param outline its line, mirrored already if it must be a mirror image
 * @param ways how it may lie; at least one
 * @param grade the number of the region of every bed that it may lie on
 * @param worth how much it matters that it is laid, beside the others
 */
public record Figure(Outline outline, List<Way> ways, int grade, double worth) {
    /** Copies the ways. */
    public Figure {
        ways = List.copyOf(ways);
        if (ways.isEmpty()) {
            throw new IllegalArgumentException("a figure needs one way to lie or more");
        }
    }
}
