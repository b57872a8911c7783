package secondbolt.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.shape.Point;

/**
 * A line as it is met on a glued sheet, at small steps along the course it ought to run.
 *
 * <p>It counts as met where it alone is dark, and as wide as its pen: not where a letter, a notch
 * or a join mark comes near, nor between two dashes.
 */
public final class PrintedLine {
    /** So near its corners the neighbour's line begins to show in its own. */
    private static final double CLEAR_MM = 2;

    /** So far to either side nothing else may be dark. */
    private static final double REACH_MM = 1.2;

    /** How much wider or narrower than the pen it may look; a pixel is 0.085 mm. */
    private static final double WIDTH_WITHIN_MM = 0.08;

    /** It is followed in steps of so much. */
    private static final double RUN_STEP_MM = 0.4;

    /** So many in all, before and behind: longer than a letter's stroke, shorter than a dash. */
    private static final int RUN_STEPS = 6;

    /** How much it may sway from its course on the way: half a pixel, */
    private static final double SWAY_MM = 0.04;

    /** and this for a millimetre: a curve of 20 mm radius; what crosses it leans more. */
    private static final double SWAY_A_MM = 0.08;

    /** So much of its end a corner is found from. */
    private static final double END_MM = 15;

    /** Longer than a dash and a gap. */
    private static final double STRETCH_MM = 6;

    private final Course.Station start;
    private final Course.Station end;
    private final List<Met> met = new ArrayList<>();
    private final List<Course.Station> sought;
    private final double lengthMm;

    /** The pen a line is drawn with. */
    public enum Ink {
        /** The cutting line. */
        HEAVY(0.5, 1),
        /** The sewing line. */
        DASHED(0.2, 0.5);

        private final double widthMm;

        /** How far apart it is looked for: often enough to meet each dash several times. */
        private final double stepMm;

        Ink(double widthMm, double stepMm) {
            this.widthMm = widthMm;
            this.stepMm = stepMm;
        }

        /**
         * Where it lies to the left of a place, if it alone is dark there and runs on as far as a
         * line does; a letter's stroke seen between two dashes does not.
         */
        public Optional<Double> leftMm(GluedSheet sheet, Course.Station at) {
            List<Raster.Run> here = across(sheet, at);
            return here.size() == 1 && isOurs(here.get(0)) && runsOn(sheet, at, here.get(0))
                    ? Optional.of(here.get(0).middleMm())
                    : Optional.empty();
        }

        private boolean runsOn(GluedSheet sheet, Course.Station at, Raster.Run here) {
            return steps(sheet, at, here, RUN_STEP_MM) + steps(sheet, at, here, -RUN_STEP_MM)
                    >= RUN_STEPS;
        }

        private int steps(GluedSheet sheet, Course.Station at, Raster.Run here, double stepMm) {
            int steps = 0;
            while (steps < RUN_STEPS && isMet(sheet, at, here, stepMm * (steps + 1))) {
                steps++;
            }
            return steps;
        }

        private boolean isMet(GluedSheet sheet, Course.Station at, Raster.Run here, double onMm) {
            double swayMm = SWAY_MM + SWAY_A_MM * Math.abs(onMm);
            return across(sheet, at.ahead(onMm)).stream()
                    .filter(this::isOurs)
                    .anyMatch(there -> Math.abs(there.middleMm() - here.middleMm()) <= swayMm);
        }

        private static List<Raster.Run> across(GluedSheet sheet, Course.Station at) {
            return sheet.through(at.at(), at.along(), -at.across(), REACH_MM);
        }

        private boolean isOurs(Raster.Run run) {
            return Math.abs(run.widthMm() - widthMm) <= WIDTH_WITHIN_MM;
        }
    }

    /**
     * A point of the line.
     *
     * @param alongMm how far along the course
     * @param at where it is met
     * @param offMm how far to the left of the course
     */
    public record Met(double alongMm, Point at, double offMm) {}

    private PrintedLine(GluedSheet sheet, Course course, Point moved, Ink ink) {
        List<Course.Station> stations = course.stations(ink.stepMm, CLEAR_MM);
        this.start = course.start().moved(moved);
        this.end = course.end().moved(moved);
        this.sought = stations;
        this.lengthMm = course.lengthMm();
        for (Course.Station station : stations) {
            Course.Station here = station.moved(moved);
            ink.leftMm(sheet, here)
                    .ifPresent(off -> met.add(new Met(here.alongMm(), here.leftMm(off), off)));
        }
    }

    /**
     * The line that ought to run along a course.
     *
     * @param moved where the course's origin lies on the sheet
     */
    public static PrintedLine on(GluedSheet sheet, Course course, Point moved, Ink ink) {
        return new PrintedLine(sheet, course, moved, ink);
    }

    /** Where it was met, in order. */
    public List<Met> met() {
        return List.copyOf(met);
    }

    /** In how many places it was looked for. */
    public int sought() {
        return sought.size();
    }

    /** The longest stretch on which it was not met, the clear ends left out. */
    public double longestGapMm() {
        double longest = 0;
        double from = CLEAR_MM;
        for (Met point : met) {
            longest = Math.max(longest, point.alongMm - from);
            from = point.alongMm;
        }
        return Math.max(longest, lengthMm - CLEAR_MM - from);
    }

    /** How many stretches of it, each longer than a dash and a gap, there are in all. */
    public long stretches() {
        return sought.stream().map(station -> stretch(station.alongMm())).distinct().count();
    }

    /** On how many of them it was met. */
    public long stretchesMet() {
        return met.stream().map(point -> stretch(point.alongMm)).distinct().count();
    }

    private static int stretch(double alongMm) {
        return (int) ((alongMm - CLEAR_MM) / STRETCH_MM);
    }

    /** How it runs near its start, if enough of it is met there. */
    public Optional<Bend> atStart() {
        return bend(start, met.stream().filter(p -> p.alongMm < END_MM).toList());
    }

    /** How it runs near its end, likewise. */
    public Optional<Bend> atEnd() {
        return bend(end, met.stream().filter(p -> p.alongMm > lengthMm - END_MM).toList());
    }

    private static Optional<Bend> bend(Course.Station from, List<Met> points) {
        return points.size() < Bend.POINTS
                ? Optional.empty()
                : Optional.of(Bend.through(points.stream().map(Met::at).toList(), from));
    }

    /**
     * Its length from one corner to the next, by what was met on the way.
     *
     * @param stepMm points of it nearer to each other are passed over
     */
    public double lengthMm(Point from, Point to, double stepMm) {
        double measuredMm = 0;
        Point last = from;
        for (Met point : met) {
            if (last.distanceMm(point.at) >= stepMm && point.at.distanceMm(to) >= stepMm) {
                measuredMm += last.distanceMm(point.at);
                last = point.at;
            }
        }
        return measuredMm + last.distanceMm(to);
    }
}
