package secondbolt.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/**
 * A ring with fewer corners that leaves nothing of the old one outside: where a run of corners is
 * replaced by one edge, that edge moves out by as much as the run bulged beyond it, and no farther.
 * So a straight edge stays where it is, to the last bit, and two pieces that fit together exactly
 * still do.
 */
final class LooseRing {
    /** An edge that nothing bulges beyond by more than this has not moved. */
    private static final double DUST_MM = 1e-9;

    private final Coordinate[] corners;
    private final List<Integer> kept;
    private final double outward;

    private LooseRing(Coordinate[] corners, List<Integer> kept, double outward) {
        this.corners = corners;
        this.kept = kept;
        this.outward = outward;
    }

    /**
     * Loosens a ring.
     *
     * @param ring its corners, the first again at the end
     * @param simple some of them in the same order, the first again at the end
     * @param outward above zero if what must stay covered is on the left of the ring, below if it
     *     is on its right
     * @return the corners, the first again at the end; nothing if two edges meet nowhere near
     */
    static Optional<Coordinate[]> of(Coordinate[] ring, Coordinate[] simple, double outward) {
        Coordinate[] corners = Arrays.copyOf(ring, ring.length - 1);
        return kept(corners, simple)
                .flatMap(kept -> new LooseRing(corners, kept, Math.signum(outward)).loosened());
    }

    /** The numbers of the corners that are kept. */
    private static Optional<List<Integer>> kept(Coordinate[] corners, Coordinate[] simple) {
        List<Integer> kept = new ArrayList<>();
        int at = 0;
        for (int i = 0; i + 1 < simple.length; i++) {
            while (at < corners.length && !corners[at].equals2D(simple[i])) {
                at++;
            }
            kept.add(at++);
        }
        boolean isWhole = kept.size() > 2 && kept.get(kept.size() - 1) < corners.length;
        return isWhole ? Optional.of(kept) : Optional.empty();
    }

    private Optional<Coordinate[]> loosened() {
        int n = kept.size();
        double[] out = new double[n];
        for (int i = 0; i < n; i++) {
            out[i] = bulge(i);
        }
        Coordinate[] loose = new Coordinate[n + 1];
        for (int i = 0; i < n; i++) {
            Optional<Coordinate> corner = corner(i, out[(i + n - 1) % n], out[i]);
            if (corner.isEmpty()) {
                return Optional.empty();
            }
            loose[i] = corner.get();
        }
        loose[n] = loose[0].copy();
        return Optional.of(loose);
    }

    private Coordinate at(int number) {
        return corners[kept.get(number % kept.size())];
    }

    /** How far the run that an edge stands for bulges beyond it, zero or more. */
    private double bulge(int edge) {
        Coordinate from = at(edge);
        Coordinate to = at(edge + 1);
        double length = from.distance(to);
        double most = 0;
        int last = kept.get((edge + 1) % kept.size());
        for (int i = (kept.get(edge) + 1) % corners.length;
                i != last;
                i = (i + 1) % corners.length) {
            double cross =
                    (to.x - from.x) * (corners[i].y - from.y)
                            - (to.y - from.y) * (corners[i].x - from.x);
            most = Math.max(most, -outward * cross / length);
        }
        return most > DUST_MM ? most : 0;
    }

    /** Where two edges meet that have moved out. */
    private Optional<Coordinate> corner(int number, double before, double after) {
        Coordinate at = at(number);
        if (before == 0 && after == 0) {
            return Optional.of(at.copy());
        }
        Coordinate last = at(number + kept.size() - 1);
        Coordinate next = at(number + 1);
        double inLength = last.distance(at);
        double outLength = at.distance(next);
        double ix = (at.x - last.x) / inLength;
        double iy = (at.y - last.y) / inLength;
        double ox = (next.x - at.x) / outLength;
        double oy = (next.y - at.y) / outLength;
        double cross = ix * oy - iy * ox;
        double along = ix * ox + iy * oy;
        // Along the first edge, from its end to where the second one crosses it.
        double by = outward * (after - before * along) / cross;
        double alongNext = by * along - outward * before * cross;
        boolean isNear = by > -inLength && by < outLength && alongNext < outLength;
        if (!(isNear && alongNext > -inLength)) {
            return Optional.empty();
        }
        return Optional.of(
                new Coordinate(
                        at.x + by * ix + outward * before * iy,
                        at.y + by * iy - outward * before * ix));
    }
}
