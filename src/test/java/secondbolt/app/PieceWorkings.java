package secondbolt.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.yaml.snakeyaml.Yaml;
import secondbolt.shape.Point;
import secondbolt.tools.Course;

/**
 * What {@code workings.json} tells of one piece.
 *
 * @param name of the piece
 * @param outline its sewing line, closed
 * @param edgesMm the length of each edge, in the order of the outline
 * @param cut its cutting line, closed
 * @param allowancesMm of each edge
 */
record PieceWorkings(
        String name,
        List<Point> outline,
        Map<String, Double> edgesMm,
        List<Point> cut,
        Map<String, Double> allowancesMm) {
    /** A bend of the flattened curves is less, a corner of a piece more. */
    private static final double CORNER_DEGREES = 15;

    /** The pieces of a project, by name. */
    @SuppressWarnings("unchecked") // the file is ours
    static Map<String, PieceWorkings> of(String json) {
        Map<String, Object> workings = new Yaml().load(json);
        Map<String, Object> fit = (Map<String, Object>) workings.get("fit");
        Map<String, Object> cutting = (Map<String, Object>) workings.get("cutting");
        Map<String, PieceWorkings> pieces = new LinkedHashMap<>();
        ((Map<String, Object>) fit.get("pieces"))
                .forEach(
                        (name, piece) ->
                                pieces.put(
                                        name,
                                        of(
                                                name,
                                                (Map<String, Object>) piece,
                                                (Map<String, Object>) cutting.get(name))));
        return pieces;
    }

    private static PieceWorkings of(String name, Map<String, Object> fit, Map<String, Object> cut) {
        return new PieceWorkings(
                name,
                points(fit.get("outline_mm")),
                numbers(fit.get("edges_mm")),
                points(cut.get("cut_outline_mm")),
                numbers(cut.get("allowances_mm")));
    }

    @SuppressWarnings("unchecked") // the file is ours
    private static List<Point> points(Object told) {
        return ((List<List<Number>>) told)
                .stream()
                        .map(p -> new Point(p.get(0).doubleValue(), p.get(1).doubleValue()))
                        .toList();
    }

    @SuppressWarnings("unchecked") // the file is ours
    private static Map<String, Double> numbers(Object told) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        ((Map<String, Number>) told).forEach((k, number) -> numbers.put(k, number.doubleValue()));
        return numbers;
    }

    /** The same piece as a printer would print it that is off by a factor. */
    PieceWorkings scaled(double factor) {
        return new PieceWorkings(
                name, scaled(outline, factor), edgesMm, scaled(cut, factor), allowancesMm);
    }

    /** As it lies when it is turned clockwise by a quarter to share a page. */
    PieceWorkings turned() {
        return new PieceWorkings(name, turned(outline), edgesMm, turned(cut), allowancesMm);
    }

    private static List<Point> turned(List<Point> points) {
        return points.stream().map(p -> new Point(-p.yMm(), p.xMm())).toList();
    }

    private static List<Point> scaled(List<Point> points, double factor) {
        return points.stream().map(p -> new Point(p.xMm() * factor, p.yMm() * factor)).toList();
    }

    List<String> edges() {
        return List.copyOf(edgesMm.keySet());
    }

    /** Its edges, each on its own, in order. */
    List<Course> sewn() {
        List<Integer> corners = edgeStarts();
        return Course.between(outline, corners);
    }

    /** Which points of the outline the edges start from: those so far along it. */
    List<Integer> edgeStarts() {
        List<Integer> starts = new ArrayList<>();
        double wantedMm = 0;
        for (double edgeMm : edgesMm.values()) {
            starts.add(nearestTo(wantedMm));
            wantedMm += edgeMm;
        }
        return starts;
    }

    private int nearestTo(double wantedMm) {
        int nearest = 0;
        double passedMm = 0;
        double nearestMm = 0;
        for (int i = 1; i < outline.size(); i++) {
            passedMm += outline.get(i - 1).distanceMm(outline.get(i));
            if (Math.abs(passedMm - wantedMm) < Math.abs(nearestMm - wantedMm)) {
                nearest = i;
                nearestMm = passedMm;
            }
        }
        return nearest;
    }

    /** Its cutting line from corner to corner. */
    List<Course> cutLines() {
        List<Integer> corners =
                IntStream.range(0, cut.size())
                        .filter(i -> Course.turnDegrees(cut, i) > CORNER_DEGREES)
                        .boxed()
                        .toList();
        return Course.between(cut, corners);
    }

    /** Whether two edges meet in a corner that can be seen, at the start of this one. */
    boolean startsAtACorner(int edge) {
        return Course.turnDegrees(outline, edgeStarts().get(edge)) > CORNER_DEGREES;
    }

    double allowanceMm(int edge) {
        return allowancesMm.getOrDefault(edges().get(edge), 0.0);
    }

    /** Whether its outline runs with the clock, as it is seen on paper. */
    boolean runsWithTheClock() {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            Point a = outline.get(i);
            Point b = outline.get((i + 1) % outline.size());
            twice += a.xMm() * b.yMm() - b.xMm() * a.yMm();
        }
        return twice > 0;
    }
}
