package secondbolt.lay.placement;

import java.util.List;
import secondbolt.shape.Outline;

/**
 * An item to be placed, once.
 *
 * @param outline its line in millimetres, mirrored already if it must be a mirror image
 * @param rules the orientations and positions it is allowed; at least one
 * @param grade the number of the region of every container that it may lie on, from 0
 * @param worth how much it matters that it is placed, beside the others; zero or more
 */
public record PackingItem(Outline outline, List<PlacementRule> rules, int grade, double worth) {
    /** Copies the rules. */
    public PackingItem {
        rules = List.copyOf(rules);
        if (rules.isEmpty()) {
            throw new IllegalArgumentException("rules: an item needs one or more, and has none");
        }
    }
}
