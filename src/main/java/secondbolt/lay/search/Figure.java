package secondbolt.lay.search;

import java.util.List;
import secondbolt.shape.Outline;

/**
 * A shape to be laid, once.
 *
 * @param outline its line, mirrored already if it is a mirror image
 * @param turns the degrees it may be turned by, from across towards along; at least one
 * @param mayLieOnHidden whether it may lie on what is good enough for hidden pieces
 * @param worth how much it matters that it is laid, beside the others
 */
public record Figure(Outline outline, List<Integer> turns, boolean mayLieOnHidden, double worth) {
    /** Copies the turns. */
    public Figure {
        turns = List.copyOf(turns);
        if (turns.isEmpty()) {
            throw new IllegalArgumentException("a figure needs one turn or more");
        }
    }
}
