package secondbolt.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.shape.Point;

/**
 * Finds a piece on a glued sheet by its cutting line: moved, never turned or stretched.
 *
 * <p>First wherever the line is dark in most places, then to the middle of what it is off.
 */
public final class Placement {
    /** Less than half the cutting line's width, so that one of the places tried lies on it. */
    private static final double STEP_MM = 0.3;

    private static final double FIRST_LOOK_MM = 9;

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
        Point best = Point.ORIGIN;
        int most = (int) (firstLook.size() * DARK_SHARE);
        boolean found = false;
        for (double y = -top; y + bottom < sheet.heightMm(); y += STEP_MM) {
            for (double x = -left; x + right < sheet.widthMm(); x += STEP_MM) {
                int dark = dark(x, y, most);
                if (dark > most) {
                    most = dark;
                    best = new Point(x, y);
                    found = true;
                }
            }
        }
        return found ? Optional.of(best) : Optional.empty();
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
