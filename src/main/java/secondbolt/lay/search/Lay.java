package secondbolt.lay.search;

import java.util.List;

/**
 * What a search came to.
 *
 * @param placed the figures that found a place, by their numbers
 * @param leftOver the numbers of those that did not
 * @param isFinished whether the search ran to its end; an interrupted one gives the best so far
 */
public record Lay(List<Placed> placed, List<Integer> leftOver, boolean isFinished) {
    /** Copies the lists. */
    public Lay {
        placed = List.copyOf(placed);
        leftOver = List.copyOf(leftOver);
    }
}
