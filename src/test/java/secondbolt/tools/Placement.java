package secondbolt.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.shape.Point;

/**
 * Finds a piece on a glued sheet by its cutting line: moved, never turned or stretched.
 *
 * <p>First wherever the line is dark in most places, then to the middle of what it is off. Places
 * are tried in the order of reading; a square of them at once is passed over where too many points
 * of the line would come to lie on white whichever is taken.
 */
public final class Placement {
    /** Less than half the cutting line's width, so that one of the places tried lies on it. */
    private static final double STEP_MM = 0.3;

    private static final double FIRST_LOOK_MM = 9;

    /** So many places across and along are passed over at once. */
    private static final int AT_ONCE = 8;

    /** Enough to find a piece that is printed wrong, so that it can be told how wrong. */
    private static final double DARK_SHARE = 0.6;

    private static final int REFINED = 4;

    private final GluedSheet sheet;
    private final List<Course.Station> stations;
    private final List<Point> firstLook;

    private Placement(GluedSheet sheet, List<Course> cut) {
        this.sheet = sheet;
        this.stations = cut.stream().flatMap(c -> c.stations(2, 2).stream()).toList();
        this.firstLook = scattered(cut);
    }

    /** In an order that soon leaves the first line looked at. */
    private static List<Point> scattered(List<Course> cut) {
        List<Point> all =
                cut.stream()
                        .flatMap(course -> course.stations(FIRST_LOOK_MM, 0).stream())
                        .map(Course.Station::at)
                        .toList();
        List<Point> scattered = new ArrayList<>();
        int stride = Math.max(1, all.size() / 7);
        for (int from = 0; from < stride; from++) {
            for (int i = from; i < all.size(); i += stride) {
                scattered.add(all.get(i));
            }
        }
        return scattered;
    }

    /**
     * Where the origin of the piece lies on the sheet.
     *
     * @param cut its cutting line
     */
    public static Optional<Point> of(GluedSheet sheet, List<Course> cut) {
        Placement placement = new Placement(sheet, cut);
        return placement.darkest().map(placement::refined);
    }

    private Optional<Point> darkest() {
        double left = firstLook.stream().mapToDouble(Point::xMm).min().orElseThrow();
        double right = firstLook.stream().mapToDouble(Point::xMm).max().orElseThrow();
        double top = firstLook.stream().mapToDouble(Point::yMm).min().orElseThrow();
        double bottom = firstLook.stream().mapToDouble(Point::yMm).max().orElseThrow();
        double[] across = steps(-left, sheet.widthMm() - right);
        double[] along = steps(-top, sheet.heightMm() - bottom);
        Point best = Point.ORIGIN;
        int most = (int) (firstLook.size() * DARK_SHARE);
        boolean found = false;
        for (int row = 0; row < along.length; row += AT_ONCE) {
            boolean[] worth = worth(across, along[row], most);
            for (int down = row; down < Math.min(row + AT_ONCE, along.length); down++) {
                for (int i = 0; i < across.length; i++) {
                    if (!worth[i / AT_ONCE]) {
                        continue;
                    }
                    int dark = dark(across[i], along[down], most);
                    if (dark > most) {
                        most = dark;
                        best = new Point(across[i], along[down]);
                        found = true;
                    }
                }
            }
        }
        return found ? Optional.of(best) : Optional.empty();
    }

    private static double[] steps(double from, double until) {
        List<Double> steps = new ArrayList<>();
        for (double at = from; at < until; at += STEP_MM) {
            steps.add(at);
        }
        return steps.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Of each square of places in a row of them, whether one may have more dark points. */
    private boolean[] worth(double[] across, double y, int most) {
        boolean[] worth = new boolean[(across.length + AT_ONCE - 1) / AT_ONCE];
        for (int i = 0; i < worth.length; i++) {
            worth[i] = mayBeDark(across[i * AT_ONCE], y, most);
        }
        return worth;
    }

    private boolean mayBeDark(double x, double y, int most) {
        double wideMm = AT_ONCE * STEP_MM;
        int light = 0;
        for (Point point : firstLook) {
            if (!sheet.hasDarkWithin(point.xMm() + x, point.yMm() + y, wideMm)) {
                light++;
                if (firstLook.size() - light <= most) {
                    return false;
                }
            }
        }
        return true;
    }

    /** How many points are dark; a low number as soon as there cannot be more than so many. */
    private int dark(double x, double y, int most) {
        int light = 0;
        for (Point point : firstLook) {
            if (!sheet.isDark(point.moved(x, y))) {
                light++;
                if (firstLook.size() - light <= most) {
                    return 0;
                }
            }
        }
        return firstLook.size() - light;
    }

    private Point refined(Point about) {
        Point moved = about;
        for (int i = 0; i < REFINED; i++) {
            moved = nearer(moved);
        }
        return moved;
    }

    /** Moved so that the squares of what the line is off add up to the least. */
    private Point nearer(Point moved) {
        double xx = 0;
        double xy = 0;
        double yy = 0;
        double x = 0;
        double y = 0;
        for (Course.Station station : stations) {
            Optional<Double> off = PrintedLine.Ink.HEAVY.leftMm(sheet, station.moved(moved));
            if (off.isPresent()) {
                double leftX = station.along();
                double leftY = -station.across();
                xx += leftX * leftX;
                xy += leftX * leftY;
                yy += leftY * leftY;
                x += leftX * off.get();
                y += leftY * off.get();
            }
        }
        double whole = xx * yy - xy * xy;
        return moved.moved((x * yy - y * xy) / whole, (y * xx - x * xy) / whole);
    }
}
