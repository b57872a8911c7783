package secondbolt.app;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import secondbolt.shape.Point;
import secondbolt.tools.Bend;
import secondbolt.tools.Course;
import secondbolt.tools.GluedSheet;
import secondbolt.tools.Placement;
import secondbolt.tools.PrintedLine;
import secondbolt.tools.PrintedLine.Ink;

/** One piece as it is measured on its glued sheet. */
final class PrintedPiece {
    /** A line shorter than this has no straight or curve of its own to measure. */
    private static final double SHORTEST_MM = 12;

    /** Farther apart than what the pixels are off, and near enough to follow an armhole. */
    private static final double CHORD_MM = 4;

    private final PieceWorkings workings;
    private final List<Point> light;
    private final List<PrintedLine> cut;
    private final List<PrintedLine> sewn;
    private final Map<String, Double> cornersOffMm = new LinkedHashMap<>();
    private final Map<String, Double> edgesMm = new LinkedHashMap<>();
    private final Map<String, List<Double>> widthsMm = new LinkedHashMap<>();

    private PrintedPiece(PieceWorkings workings, GluedSheet sheet, Point moved) {
        this.workings = workings;
        this.light =
                workings.cut().stream()
                        .filter(p -> !sheet.isDark(p.moved(moved.xMm(), moved.yMm())))
                        .toList();
        this.cut =
                workings.cutLines().stream()
                        .filter(course -> course.lengthMm() >= SHORTEST_MM)
                        .map(course -> PrintedLine.on(sheet, course, moved, Ink.HEAVY))
                        .toList();
        List<Course> courses = workings.sewn();
        this.sewn = new ArrayList<>();
        for (int i = 0; i < courses.size(); i++) {
            // Without an allowance the piece is cut where it is sewn, or lies on the fold.
            Ink ink = workings.allowanceMm(i) > 0 ? Ink.DASHED : Ink.HEAVY;
            sewn.add(PrintedLine.on(sheet, courses.get(i), moved, ink));
            widthsMm.put(workings.edges().get(i), widths(sheet, courses.get(i), moved, i));
        }
        List<Point> corners = corners(courses, moved);
        for (int i = 0; i < courses.size(); i++) {
            Point end = corners.get((i + 1) % corners.size());
            edgesMm.put(
                    workings.edges().get(i), sewn.get(i).lengthMm(corners.get(i), end, CHORD_MM));
        }
    }

    /** The piece, if its cutting line is on this sheet. */
    static Optional<PrintedPiece> on(GluedSheet sheet, PieceWorkings workings) {
        return asItLies(sheet, workings).or(() -> asItLies(sheet, workings.turned()));
    }

    private static Optional<PrintedPiece> asItLies(GluedSheet sheet, PieceWorkings workings) {
        return Placement.of(sheet, workings.cutLines())
                .map(moved -> new PrintedPiece(workings, sheet, moved));
    }

    /** Where each edge starts: where it meets the one before. */
    private List<Point> corners(List<Course> courses, Point moved) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < sewn.size(); i++) {
            int before = (i + sewn.size() - 1) % sewn.size();
            Bend start = met(i, sewn.get(i).atStart());
            // Where one edge runs on into the next, the print shows no corner to measure.
            Point corner =
                    workings.startsAtACorner(i)
                            ? met(before, sewn.get(before).atEnd()).meeting(start)
                            : start.foot();
            corners.add(corner);
            Point ought = courses.get(i).start().at().moved(moved.xMm(), moved.yMm());
            cornersOffMm.put("start of " + workings.edges().get(i), corner.distanceMm(ought));
        }
        return corners;
    }

    private Bend met(int edge, Optional<Bend> bend) {
        return bend.orElseThrow(
                () ->
                        new AssertionError(
                                name() + "." + edges().get(edge) + " is not met near its end"));
    }

    /** From the sewing line to the cutting line, square across, wherever both are met. */
    private List<Double> widths(GluedSheet sheet, Course course, Point moved, int edge) {
        double allowanceMm = workings.allowanceMm(edge);
        double outMm = workings.runsWithTheClock() ? allowanceMm : -allowanceMm;
        List<Double> widths = new ArrayList<>();
        if (allowanceMm > 0) {
            // Beyond its ends the allowance belongs to the neighbour as well.
            for (Course.Station at : course.stations(0.5, allowanceMm + 2)) {
                Course.Station sewnAt = at.moved(moved);
                Course.Station cutAt =
                        new Course.Station(
                                at.alongMm(), sewnAt.leftMm(outMm), at.across(), at.along());
                Optional<Double> sewnLeft = Ink.DASHED.leftMm(sheet, sewnAt);
                Optional<Double> cutLeft = Ink.HEAVY.leftMm(sheet, cutAt);
                if (sewnLeft.isPresent() && cutLeft.isPresent()) {
                    widths.add(Math.abs(outMm + cutLeft.get() - sewnLeft.get()));
                }
            }
        }
        return widths;
    }

    String name() {
        return workings.name();
    }

    /** Corners and points of its curves that the cutting line does not cover, or no tile shows. */
    List<Point> light() {
        return light;
    }

    /** How far off the cutting line is, wherever it is met. */
    DoubleStream cutOffMm() {
        return off(cut.stream());
    }

    /** How far off the sewing line is, wherever it is met. */
    DoubleStream sewnOffMm() {
        return off(sewn.stream());
    }

    private static DoubleStream off(Stream<PrintedLine> lines) {
        return lines.flatMap(line -> line.met().stream()).mapToDouble(met -> Math.abs(met.offMm()));
    }

    /** How far off each corner of the sewing line is. */
    Map<String, Double> cornersOffMm() {
        return cornersOffMm;
    }

    /** The share of the cutting line that was met. */
    double cutShare() {
        double met = cut.stream().mapToInt(line -> line.met().size()).sum();
        return met / cut.stream().mapToInt(PrintedLine::sought).sum();
    }

    /** The share of the sewing line, by stretches longer than a dash and a gap, that was met. */
    double sewnShare() {
        double met = sewn.stream().mapToLong(PrintedLine::stretchesMet).sum();
        return met / sewn.stream().mapToLong(PrintedLine::stretches).sum();
    }

    /** The longest stretch of the sewing line on which it was not met. */
    double longestGapMm() {
        return sewn.stream().mapToDouble(PrintedLine::longestGapMm).max().orElseThrow();
    }

    /** The length of an edge, as measured. */
    double edgeMm(String edge) {
        return Optional.ofNullable(edgesMm.get(edge))
                .orElseThrow(() -> new AssertionError(name() + " has no edge " + edge));
    }

    /** The length of an edge, as the workings tell it. */
    double workedMm(String edge) {
        return workings.edgesMm().get(edge);
    }

    /** Its edges in order. */
    List<String> edges() {
        return workings.edges();
    }

    /** The widths of an edge's allowance, wherever both lines are met. */
    List<Double> widthsMm(String edge) {
        return widthsMm.get(edge);
    }

    private int worst() {
        return IntStream.range(0, sewn.size())
                .filter(edge -> !sewn.get(edge).met().isEmpty())
                .boxed()
                .max(Comparator.comparing(edge -> Math.abs(worst(sewn.get(edge)).offMm())))
                .orElseThrow();
    }

    private static PrintedLine.Met worst(PrintedLine line) {
        return line.met().stream()
                .max(Comparator.comparing(met -> Math.abs(met.offMm())))
                .orElseThrow();
    }

    /** What was measured, in a line. */
    String told() {
        int edge = worst();
        Map.Entry<String, Double> corner =
                cornersOffMm.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow();
        return String.format(
                Locale.ROOT,
                "%s: cutting line mean %.3f worst %.3f on %.1f %%; sewing line mean %.3f worst %.3f"
                        + " (%s, %s) on %.1f %%, longest gap %.0f; worst corner %.3f, %s (mm)",
                name(),
                cutOffMm().average().orElseThrow(),
                cutOffMm().max().orElseThrow(),
                100 * cutShare(),
                sewnOffMm().average().orElseThrow(),
                sewnOffMm().max().orElseThrow(),
                edges().get(edge),
                worst(sewn.get(edge)).alongMm(),
                100 * sewnShare(),
                longestGapMm(),
                corner.getValue(),
                corner.getKey());
    }
}
