package secondbolt.shape.cut;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import secondbolt.shape.Point;
import secondbolt.shape.Stretch;

/**
 * Corners of straight lines that run on straight past both ends, counted in millimetres along from
 * the first corner: below zero before it, above the length past the last.
 */
final class Run {
    private static final double DUST_MM = 1e-9;

    private final List<Point> points;
    private final Point lead;
    private final Point trail;
    private final double[] along;

    /**
     * A run.
     *
     * @param points two or more
     * @param lead where it leads at its first corner, of length one
     * @param trail where it leads at its last corner, of length one
     */
    Run(List<Point> points, Point lead, Point trail) {
        this.points = List.copyOf(points);
        this.lead = lead;
        this.trail = trail;
        along = new double[points.size()];
        for (int i = 1; i < along.length; i++) {
            along[i] = along[i - 1] + points.get(i).distanceMm(points.get(i - 1));
        }
    }

    double lengthMm() {
        return along[along.length - 1];
    }

    Point lead() {
        return lead;
    }

    Point trail() {
        return trail;
    }

    Point at(double alongMm) {
        if (alongMm <= 0) {
            return points.get(0).moved(lead.xMm() * alongMm, lead.yMm() * alongMm);
        }
        for (int i = 1; i < along.length; i++) {
            if (alongMm <= along[i]) {
                double length = along[i] - along[i - 1];
                double share = length > 0 ? (alongMm - along[i - 1]) / length : 0;
                return Stretch.mix(points.get(i - 1), points.get(i), share);
            }
        }
        double past = alongMm - lengthMm();
        return points.get(along.length - 1).moved(trail.xMm() * past, trail.yMm() * past);
    }

    /** Both ends and the corners between. */
    List<Point> between(double fromMm, double toMm) {
        List<Point> part = new ArrayList<>();
        part.add(at(fromMm));
        for (int i = 0; i < along.length; i++) {
            if (along[i] > fromMm && along[i] < toMm) {
                part.add(points.get(i));
            }
        }
        part.add(at(toMm));
        return part;
    }

    Run reversed() {
        List<Point> back = new ArrayList<>(points);
        Collections.reverse(back);
        return new Run(back, minus(trail), minus(lead));
    }

    private static Point minus(Point arrow) {
        return new Point(-arrow.xMm(), -arrow.yMm());
    }

    /** This with its straight continuations, so far. */
    private Run extended(double reachMm) {
        List<Point> all = new ArrayList<>();
        all.add(at(-reachMm));
        all.addAll(points);
        all.add(at(lengthMm() + reachMm));
        return new Run(all, lead, trail);
    }

    /**
     * Where two runs meet.
     *
     * @param firstMm along the first
     * @param secondMm along the second
     */
    record Meeting(double firstMm, double secondMm) {}

    /**
     * The meeting nearest to where this ends and the other begins.
     *
     * @param reachMm how far both may run on straight
     */
    Optional<Meeting> meeting(Run other, double reachMm) {
        Run a = extended(reachMm);
        Run b = other.extended(reachMm);
        Optional<Meeting> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < a.along.length; i++) {
            for (int j = 1; j < b.along.length; j++) {
                Optional<Meeting> found = crossing(a, i, b, j, reachMm);
                double off =
                        found.map(m -> Math.abs(m.firstMm - lengthMm()) + Math.abs(m.secondMm))
                                .orElse(Double.POSITIVE_INFINITY);
                if (off < least) {
                    least = off;
                    best = found;
                }
            }
        }
        return best;
    }

    private static Optional<Meeting> crossing(Run a, int i, Run b, int j, double reachMm) {
        Point p = a.points.get(i - 1);
        Point q = b.points.get(j - 1);
        double aLength = a.along[i] - a.along[i - 1];
        double bLength = b.along[j] - b.along[j - 1];
        double ax = a.points.get(i).xMm() - p.xMm();
        double ay = a.points.get(i).yMm() - p.yMm();
        double bx = b.points.get(j).xMm() - q.xMm();
        double by = b.points.get(j).yMm() - q.yMm();
        double cross = ax * by - ay * bx;
        if (Math.abs(cross) <= 1e-12 * aLength * bLength) {
            return Optional.empty();
        }
        double x = q.xMm() - p.xMm();
        double y = q.yMm() - p.yMm();
        double first = (x * by - y * bx) / cross;
        double second = (x * ay - y * ax) / cross;
        double aSlack = DUST_MM / aLength;
        double bSlack = DUST_MM / bLength;
        return first >= -aSlack && first <= 1 + aSlack && second >= -bSlack && second <= 1 + bSlack
                ? Optional.of(
                        new Meeting(
                                a.along[i - 1] + first * aLength - reachMm,
                                b.along[j - 1] + second * bLength - reachMm))
                : Optional.empty();
    }

    /** How far along lies the point nearest to another, on the run or its continuations. */
    double footMm(Point point) {
        double before = dot(point, points.get(0), lead);
        double past = dot(point, points.get(along.length - 1), trail);
        double foot = 0;
        double least = Double.POSITIVE_INFINITY;
        double[] ends = {Math.min(0, before), lengthMm() + Math.max(0, past)};
        for (double end : ends) {
            double distance = at(end).distanceMm(point);
            if (distance < least) {
                least = distance;
                foot = end;
            }
        }
        for (int i = 1; i < along.length; i++) {
            Stretch.Nearest nearest =
                    Stretch.straight(points.get(i - 1), points.get(i)).nearest(point);
            if (nearest.distanceMm() < least) {
                least = nearest.distanceMm();
                foot = along[i - 1] + nearest.share() * (along[i] - along[i - 1]);
            }
        }
        return foot;
    }

    private static double dot(Point point, Point origin, Point arrow) {
        return (point.xMm() - origin.xMm()) * arrow.xMm()
                + (point.yMm() - origin.yMm()) * arrow.yMm();
    }
}
