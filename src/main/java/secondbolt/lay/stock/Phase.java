package secondbolt.lay.stock;

import java.util.ArrayList;
import java.util.List;
import secondbolt.cloth.ClothYield;
import secondbolt.lay.search.Rail;
import secondbolt.lay.search.Way;
import secondbolt.shape.Box;
import secondbolt.shape.Point;

/**
 * How stripes or checks lie under the matched pieces.
 *
 * @param stock the cloths
 * @param matching which pieces match
 * @param corner the number of the cloth in whose corner the largest of them could lie
 * @param beds the numbers of the cloths that they may lie on
 * @param share of a repeat that it lies from that corner
 */
record Phase(Stock stock, Matching matching, int corner, List<Integer> beds, double share) {
    /**
     * The search takes a piece for so much wider than it is, which must not reach off the cloth.
     */
    private static final double IN_MM = KeptLays.TOLERANCE_MM;

    /** Copies the numbers. */
    Phase {
        beds = List.copyOf(beds);
    }

    /** How a matched piece may lie. */
    List<Way> ways(int piece) {
        Box cloth = stock.spreads().get(corner).sound().box();
        Box leader = matching.turned(matching.leader(piece)).box();
        Point by = matching.fromLeader(piece);
        ClothYield.Repeat repeat = matching.repeat();
        double x = IN_MM + cloth.leftMm() - leader.leftMm() + share * repeat.acrossMm() + by.xMm();
        double y = IN_MM + cloth.topMm() - leader.topMm() + share * repeat.alongMm() + by.yMm();
        Point from = begins(corner);
        List<Way> ways = new ArrayList<>();
        for (int bed : beds) {
            Point here = begins(bed);
            ways.add(
                    Way.turned(matching.turn(piece))
                            .on(
                                    rail(x + here.xMm() - from.xMm(), repeat.acrossMm()),
                                    rail(y + here.yMm() - from.yMm(), repeat.alongMm()))
                            .onBed(bed));
        }
        return ways;
    }

    /** Where the pattern begins, if that tells one cloth from another. */
    private Point begins(int bed) {
        return beds.size() > 1
                ? stock.spreads().get(bed).repeat().begins().orElse(Point.ORIGIN)
                : Point.ORIGIN;
    }

    private static Rail rail(double from, double every) {
        return every > 0 ? Rail.steps(from, every) : Rail.ANYWHERE;
    }
}
