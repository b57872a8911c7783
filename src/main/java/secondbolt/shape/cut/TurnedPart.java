package secondbolt.shape.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.shape.Point;
import secondbolt.shape.Stretch;

/**
 * A smooth part of an edge that is turned up.
 *
 * @param samples along it
 * @param startFootMm where, along it, the lines outside and inside begin; below zero before its
 *     start, where it runs straight on
 * @param endFootMm where they end, likewise past its end
 * @param start the side at its start
 * @param end the side at its end
 * @param way 1 if the piece lies to the right, -1 if to the left
 * @param depthMm how deep it is turned up
 */
record TurnedPart(
        Samples samples,
        double startFootMm,
        double endFootMm,
        TurnedEdge.End start,
        TurnedEdge.End end,
        int way,
        double depthMm) {
    /** A side is followed so many depths far. */
    private static final double REACH = 8;

    private static final int STEPS = 32;
    private static final double DUST_MM = 1e-7;

    /**
     * A place on the fold.
     *
     * @param at where
     * @param direction where the fold leads, of length one
     * @param alongMm from its start
     */
    record Sample(Point at, Point direction, double alongMm) {}

    /**
     * Places along a smooth line, close together.
     *
     * @param all in order
     */
    record Samples(List<Sample> all) {
        static Samples of(List<Stretch> stretches, int least, double toleranceMm) {
            List<Sample> all = new ArrayList<>();
            double before = 0;
            for (Stretch stretch : stretches) {
                int parts =
                        stretch.curved() ? Math.max(least, stretch.partsWithin(toleranceMm)) : 1;
                for (int i = all.isEmpty() ? 0 : 1; i <= parts; i++) {
                    double share = (double) i / parts;
                    double along =
                            i == parts
                                    ? stretch.lengthMm()
                                    : i == 0 ? 0 : stretch.before(share).lengthMm();
                    all.add(
                            new Sample(
                                    stretch.at(share), stretch.directionAt(share), before + along));
                }
                before += stretch.lengthMm();
            }
            return new Samples(List.copyOf(all));
        }

        Sample first() {
            return all.get(0);
        }

        Sample last() {
            return all.get(all.size() - 1);
        }

        double lengthMm() {
            return last().alongMm();
        }

        /**
         * How far along lies the place nearest to a point, on the line or straight on past its
         * ends.
         *
         * <p>There the way to the point stands square to the line. Between two samples of which one
         * looks ahead to the point and the other back, what it looks ahead changes all but evenly.
         */
        double footMm(Point point) {
            double before = aheadMm(first(), point);
            double past = aheadMm(last(), point);
            double best = before < 0 ? before : past > 0 ? lengthMm() + past : 0;
            double least =
                    before < 0 || past > 0 ? at(best).distanceMm(point) : Double.POSITIVE_INFINITY;
            for (int i = 1; i < all.size(); i++) {
                double here = aheadMm(all.get(i - 1), point);
                double there = aheadMm(all.get(i), point);
                if (here >= 0 && there <= 0) {
                    double from = all.get(i - 1).alongMm();
                    double share = here > there ? here / (here - there) : 0;
                    double along = from + share * (all.get(i).alongMm() - from);
                    double off = at(along).distanceMm(point);
                    best = off < least ? along : best;
                    least = Math.min(least, off);
                }
            }
            return best;
        }

        private static double aheadMm(Sample sample, Point point) {
            Point at = sample.at();
            Point direction = sample.direction();
            return (point.xMm() - at.xMm()) * direction.xMm()
                    + (point.yMm() - at.yMm()) * direction.yMm();
        }

        /** The place so far along; past its ends straight on. */
        Point at(double alongMm) {
            if (alongMm <= 0 || alongMm >= lengthMm()) {
                Sample end = alongMm <= 0 ? first() : last();
                double on = alongMm - end.alongMm();
                return end.at().moved(end.direction().xMm() * on, end.direction().yMm() * on);
            }
            int i = number(alongMm);
            Sample a = all.get(i - 1);
            Sample b = all.get(i);
            double step = b.alongMm() - a.alongMm();
            double third = step / 3;
            Stretch between =
                    Stretch.curve(
                            a.at(),
                            a.at().moved(a.direction().xMm() * third, a.direction().yMm() * third),
                            b.at().moved(
                                            -b.direction().xMm() * third,
                                            -b.direction().yMm() * third),
                            b.at());
            return between.at((alongMm - a.alongMm()) / step);
        }

        /** Where it leads so far along. */
        Point directionAt(double alongMm) {
            if (alongMm <= 0 || alongMm >= lengthMm()) {
                return (alongMm <= 0 ? first() : last()).direction();
            }
            int i = number(alongMm);
            Sample a = all.get(i - 1);
            Sample b = all.get(i);
            double share = (alongMm - a.alongMm()) / (b.alongMm() - a.alongMm());
            Point mixed = Stretch.mix(a.direction(), b.direction(), share);
            double size = mixed.distanceMm(Point.ORIGIN);
            return new Point(mixed.xMm() / size, mixed.yMm() / size);
        }

        /** The first sample past a place inside. */
        private int number(double alongMm) {
            int i = 1;
            while (i < all.size() - 1 && all.get(i).alongMm() < alongMm) {
                i++;
            }
            return i;
        }

        /** How far it turns from its start to a place, towards the right of the way it leads. */
        double turnedAt(double alongMm) {
            double turned = 0;
            for (int i = 1; i < all.size(); i++) {
                Sample from = all.get(i - 1);
                Sample to = all.get(i);
                double angle = angle(from.direction(), to.direction());
                if (alongMm < to.alongMm()) {
                    double step = to.alongMm() - from.alongMm();
                    double share = Math.max(0, alongMm - from.alongMm()) / step;
                    return turned + share * angle;
                }
                turned += angle;
            }
            return turned;
        }

        /** The smallest radius it bends with; infinite if it is straight. */
        double tightestMm() {
            double tightest = Double.POSITIVE_INFINITY;
            for (int i = 1; i < all.size(); i++) {
                double angle = Math.abs(angle(all.get(i - 1).direction(), all.get(i).direction()));
                double step = all.get(i).alongMm() - all.get(i - 1).alongMm();
                tightest = angle > 1e-9 ? Math.min(tightest, step / angle) : tightest;
            }
            return tightest;
        }

        /** The radius of the circle through its start, middle and end, if it keeps to that. */
        Optional<Double> circleMm(double bowShare, double mostMm) {
            Point a = first().at();
            Point b = all.get(all.size() / 2).at();
            Point c = last().at();
            if (a.distanceMm(c) < mostMm) {
                c = all.get(all.size() / 4).at();
            }
            double twice =
                    (b.xMm() - a.xMm()) * (c.yMm() - a.yMm())
                            - (b.yMm() - a.yMm()) * (c.xMm() - a.xMm());
            if (twice == 0) {
                return Optional.empty();
            }
            double bow = Math.abs(twice) / a.distanceMm(c);
            Point centre = centre(a, b, c, twice);
            double radius = centre.distanceMm(a);
            double within = Math.min(mostMm, bow * bowShare);
            boolean keeps =
                    all.stream()
                            .allMatch(s -> Math.abs(centre.distanceMm(s.at()) - radius) <= within);
            return keeps ? Optional.of(radius) : Optional.empty();
        }

        private static Point centre(Point a, Point b, Point c, double twice) {
            double bx = b.xMm() - a.xMm();
            double by = b.yMm() - a.yMm();
            double cx = c.xMm() - a.xMm();
            double cy = c.yMm() - a.yMm();
            double bb = bx * bx + by * by;
            double cc = cx * cx + cy * cy;
            return a.moved((cy * bb - by * cc) / (2 * twice), (bx * cc - cx * bb) / (2 * twice));
        }
    }

    static double angle(Point in, Point out) {
        return StrictMath.atan2(
                in.xMm() * out.yMm() - in.yMm() * out.xMm(),
                in.xMm() * out.xMm() + in.yMm() * out.yMm());
    }

    static TurnedPart of(Samples samples, Run startSide, Run endSide, int way, double depthMm) {
        double startFoot = footMm(samples, startSide, depthMm).orElse(0.0);
        double endFoot = footMm(samples, endSide, depthMm).orElse(samples.lengthMm());
        Sample last = samples.last();
        Point back = new Point(-last.direction().xMm(), -last.direction().yMm());
        TurnedEdge.End start =
                new TurnedEdge.End(
                        leans(
                                startSide.lead(),
                                samples.first().direction(),
                                TurnedEdge.inward(samples.first().direction(), way)),
                        2 * startFoot);
        TurnedEdge.End end =
                new TurnedEdge.End(
                        leans(endSide.lead(), back, TurnedEdge.inward(last.direction(), way)),
                        2 * (samples.lengthMm() - endFoot));
        return new TurnedPart(samples, startFoot, endFoot, start, end, way, depthMm);
    }

    private static double leans(Point side, Point alongFold, Point square) {
        double along = side.xMm() * alongFold.xMm() + side.yMm() * alongFold.yMm();
        double in = side.xMm() * square.xMm() + side.yMm() * square.yMm();
        return StrictMath.atan2(along, in);
    }

    /** Where along the fold the place of a side lies that is so deep inside it. */
    private static Optional<Double> footMm(Samples fold, Run side, double depthMm) {
        double near = 0;
        double step = depthMm / STEPS;
        double far = step;
        while (offMm(fold, side.at(far)) < depthMm - DUST_MM) {
            near = far;
            far += step;
            if (far > REACH * depthMm) {
                return Optional.empty();
            }
        }
        while (far - near > DUST_MM) {
            double middle = (near + far) / 2;
            if (offMm(fold, side.at(middle)) < depthMm) {
                near = middle;
            } else {
                far = middle;
            }
        }
        return Optional.of(fold.footMm(side.at((near + far) / 2)));
    }

    private static double offMm(Samples fold, Point point) {
        return point.distanceMm(fold.at(fold.footMm(point)));
    }

    double lengthMm() {
        return samples.lengthMm();
    }

    private double betweenMm() {
        return endFootMm - startFootMm;
    }

    private double turnsBetween() {
        return way * (samples.turnedAt(endFootMm) - samples.turnedAt(startFootMm));
    }

    double turnsRadians() {
        return way * samples.turnedAt(samples.lengthMm());
    }

    double outerMm() {
        return betweenMm() + depthMm * turnsBetween();
    }

    double landingMm() {
        return betweenMm() - depthMm * turnsBetween();
    }

    double surplusMm() {
        return 2 * depthMm * turnsBetween();
    }

    double tightestMm() {
        return samples.tightestMm();
    }

    /** The line so far outside, from foot to foot; below zero inside. */
    List<Point> beside(double outMm) {
        List<Point> points = new ArrayList<>();
        points.add(beside(startFootMm, outMm));
        for (Sample sample : samples.all()) {
            if (sample.alongMm() > startFootMm && sample.alongMm() < endFootMm) {
                points.add(beside(sample.alongMm(), outMm));
            }
        }
        points.add(beside(endFootMm, outMm));
        return points;
    }

    private Point beside(double alongMm, double outMm) {
        Point in = TurnedEdge.inward(samples.directionAt(alongMm), way);
        return samples.at(alongMm).moved(-in.xMm() * outMm, -in.yMm() * outMm);
    }
}
