package secondbolt.tools;

import java.util.ArrayList;
import java.util.List;
import secondbolt.shape.Point;

/**
 * How a line ought to run: points joined by straight lines, in millimetres.
 *
 * @param points two or more
 */
public record Course(List<Point> points) {
    /** Copies the points. */
    public Course {
        points = List.copyOf(points);
    }

    /**
     * A place on a course.
     *
     * @param alongMm from its start
     * @param at where
     * @param across how far across a millimetre of the course leads there
     * @param along how far along it leads there
     */
    public record Station(double alongMm, Point at, double across, double along) {
        /** This moved by as much as a point lies from the origin. */
        public Station moved(Point by) {
            return new Station(alongMm, at.moved(by.xMm(), by.yMm()), across, along);
        }

        /** This moved straight on. */
        Station ahead(double mm) {
            return new Station(alongMm + mm, at.moved(across * mm, along * mm), across, along);
        }

        /** The point so far to the left of who walks along. */
        public Point leftMm(double mm) {
            return at.moved(along * mm, -across * mm);
        }
    }

    /** Parts of a closed row of points, from corner to corner. */
    public static List<Course> between(List<Point> closed, List<Integer> corners) {
        List<Course> courses = new ArrayList<>();
        int size = closed.size();
        for (int i = 0; i < corners.size(); i++) {
            int from = corners.get(i);
            int to = corners.get((i + 1) % corners.size());
            List<Point> part = new ArrayList<>(List.of(closed.get(from % size)));
            for (int k = (from + 1) % size; k != to % size; k = (k + 1) % size) {
                part.add(closed.get(k));
            }
            part.add(closed.get(to % size));
            courses.add(new Course(part));
        }
        return courses;
    }

    /** By how much a closed row of points turns at one of them, 0 to 180 degrees. */
    public static double turnDegrees(List<Point> closed, int at) {
        int size = closed.size();
        Station in = station(closed.get((at + size - 1) % size), closed.get(at % size), 0, 0);
        Station out = station(closed.get(at % size), closed.get((at + 1) % size), 0, 0);
        double sine = in.across * out.along - in.along * out.across;
        double cosine = in.across * out.across + in.along * out.along;
        return Math.abs(Math.toDegrees(Math.atan2(sine, cosine)));
    }

    /** Its length. */
    public double lengthMm() {
        double lengthMm = 0;
        for (int i = 1; i < points.size(); i++) {
            lengthMm += points.get(i - 1).distanceMm(points.get(i));
        }
        return lengthMm;
    }

    /** Places a step apart, none nearer to its ends than is to be kept clear. */
    public List<Station> stations(double stepMm, double clearMm) {
        List<Station> stations = new ArrayList<>();
        double untilMm = lengthMm() - clearMm;
        double nextMm = clearMm;
        double passedMm = 0;
        for (int i = 1; i < points.size(); i++) {
            double longMm = points.get(i - 1).distanceMm(points.get(i));
            while (nextMm <= passedMm + longMm && nextMm <= untilMm) {
                stations.add(
                        station(points.get(i - 1), points.get(i), passedMm, nextMm - passedMm));
                nextMm += stepMm;
            }
            passedMm += longMm;
        }
        return stations;
    }

    /** Where it starts. */
    public Station start() {
        return station(points.get(0), points.get(1), 0, 0);
    }

    /** Where it ends. */
    public Station end() {
        int last = points.size() - 1;
        Point from = points.get(last - 1);
        double longMm = from.distanceMm(points.get(last));
        return station(from, points.get(last), lengthMm() - longMm, longMm);
    }

    private static Station station(Point from, Point to, double passedMm, double onMm) {
        double longMm = from.distanceMm(to);
        double across = (to.xMm() - from.xMm()) / longMm;
        double along = (to.yMm() - from.yMm()) / longMm;
        return new Station(passedMm + onMm, from.moved(across * onMm, along * onMm), across, along);
    }
}
