package secondbolt.lay.stock;

import java.util.ArrayList;
import java.util.List;
import secondbolt.cloth.yields.ClothYield;
import secondbolt.lay.placement.AllowedPositions;
import secondbolt.lay.placement.PlacementRule;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/**
 * A phase of the repeat: how stripes or checks lie under the matched pieces.
 *
 * @param stock the cloths
 * @param matching which pieces match
 * @param corner the number of the cloth in whose corner the largest of them could lie
 * @param containers the numbers of the cloths that they may lie on, from 0
 * @param share of a repeat that it lies from that corner, from 0 to below 1
 */
record RepeatPhase(
        Stock stock, Matching matching, int corner, List<Integer> containers, double share) {
    /** Copies the numbers. */
    RepeatPhase {
        containers = List.copyOf(containers);
    }

    /** The rules a matched piece is placed by: one for each container. */
    List<PlacementRule> rules(int piece) {
        return matching.holds(piece)
                .map(by -> held(piece, stock.matching(by)))
                .orElseGet(() -> free(piece));
    }

    /** Where the pattern runs on from a copy that has its place. */
    private List<PlacementRule> held(int piece, List<Integer> cloths) {
        Point at = matching.place(piece);
        ClothYield.Repeat repeat = matching.repeat();
        List<PlacementRule> rules = new ArrayList<>();
        for (int cloth : cloths) {
            Point begins = stock.begins(cloth);
            rules.add(
                    PlacementRule.turned(matching.turn(piece))
                            .at(
                                    steps(at.xMm() + begins.xMm(), repeat.acrossMm()),
                                    steps(at.yMm() + begins.yMm(), repeat.alongMm()))
                            .onContainer(cloth));
        }
        return rules;
    }

    private List<PlacementRule> free(int piece) {
        Box cloth = stock.spreads().get(corner).sound().box();
        Box leader = matching.turned(matching.leader(piece)).box();
        Point by = matching.fromLeader(piece);
        ClothYield.Repeat repeat = matching.repeat();
        double x = cloth.leftMm() - leader.leftMm() + share * repeat.acrossMm() + by.xMm();
        double y = cloth.topMm() - leader.topMm() + share * repeat.alongMm() + by.yMm();
        Point from = begins(corner);
        List<PlacementRule> rules = new ArrayList<>();
        for (int container : containers) {
            Point here = begins(container);
            rules.add(
                    PlacementRule.turned(matching.turn(piece))
                            .at(
                                    steps(x + here.xMm() - from.xMm(), repeat.acrossMm()),
                                    steps(y + here.yMm() - from.yMm(), repeat.alongMm()))
                            .onContainer(container));
        }
        return rules;
    }

    /** Where the pattern begins, if that tells one cloth from another. */
    private Point begins(int container) {
        return containers.size() > 1
                ? stock.spreads().get(container).repeat().begins().orElse(Point.ORIGIN)
                : Point.ORIGIN;
    }

    private static AllowedPositions steps(double from, double every) {
        return every > 0 ? AllowedPositions.steps(from, every) : AllowedPositions.ANY;
    }
}
