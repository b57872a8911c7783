package secondbolt.lay.placement;

import java.util.List;

/**
 * What a search came to.
 *
 * @param placements where the items lie that found a position, in no order
 * @param leftOver the numbers of the items that found none, upwards
 * @param isFinished whether the search ran to its end; an interrupted one gives the best so far
 */
public record Lay(List<Placement> placements, List<Integer> leftOver, boolean isFinished) {
    /** Copies the lists. */
    public Lay {
        placements = List.copyOf(placements);
        leftOver = List.copyOf(leftOver);
    }
}
