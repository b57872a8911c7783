package secondbolt.file.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Point;

/** Puts edges drawn in any order and direction end to end into one closed outline. */
final class EdgeChain {
    /** Ends nearer than this are meant to meet. */
    private static final double MEET_MM = 0.5;

    /** Nearer than this, the ends of an edge have no direction from one to the other. */
    private static final double LEAST_APART_MM = 0.1;

    private static final String REMEDY =
            "edges whose ends meet within 0.5 mm all round, the last at the first";

    private final SourceFile source;
    private final Mistakes mistakes;

    EdgeChain(SourceFile source, Mistakes mistakes) {
        this.source = source;
        this.mistakes = mistakes;
    }

    /** The edges from the first drawn on, as it was drawn; ends that nearly meet are made to. */
    Optional<List<TracedEdge>> closed(List<TracedEdge> drawn) {
        List<TracedEdge> left = new ArrayList<>(drawn);
        List<TracedEdge> chain = new ArrayList<>(List.of(left.remove(0)));
        while (!left.isEmpty()) {
            TracedEdge last = chain.get(chain.size() - 1);
            TracedEdge next = nearest(last.line().end(), left);
            Point end = last.line().end();
            if (offMm(end, next) > MEET_MM) {
                return apart(last, next.name(), nearestEnd(end, next));
            }
            left.remove(next);
            boolean back = !isNearer(end, next.line());
            EdgeLine line = back ? next.line().reversed() : next.line();
            chain.add(next.with(beginning(line, end)));
        }
        TracedEdge last = chain.get(chain.size() - 1);
        Point start = chain.get(0).line().start();
        if (last.line().end().distanceMm(start) > MEET_MM) {
            return apart(last, chain.get(0).name(), start);
        }
        EdgeLine closing = beginning(last.line().reversed(), start).reversed();
        chain.set(chain.size() - 1, last.with(closing));
        Optional<TracedEdge> still =
                chain.stream().filter(edge -> isStill(edge, chain)).findFirst();
        still.ifPresent(this::tellStill);
        return still.isPresent() ? Optional.empty() : Optional.of(List.copyOf(chain));
    }

    /** One edge that goes all round ends where it begins, but not without a way between. */
    private static boolean isStill(TracedEdge edge, List<TracedEdge> chain) {
        EdgeLine line = edge.line();
        return chain.size() > 1
                ? line.start().distanceMm(line.end()) < LEAST_APART_MM
                : line.lengthMm() < LEAST_APART_MM;
    }

    private void tellStill(TracedEdge edge) {
        mistakes.add(
                source.mistake(
                        edge.place(),
                        "the edge `" + edge.name() + "`, which ends where it begins",
                        "an end 0.1 mm away at least, or no such edge"));
    }

    private static EdgeLine beginning(EdgeLine line, Point at) {
        Point start = line.start();
        boolean[] first = {true};
        return line.moved(
                knot -> {
                    boolean isStart = first[0] && knot.equals(start);
                    first[0] = false;
                    return isStart ? at : knot;
                });
    }

    private static TracedEdge nearest(Point end, List<TracedEdge> edges) {
        TracedEdge best = edges.get(0);
        for (TracedEdge edge : edges) {
            if (offMm(end, edge) < offMm(end, best)) {
                best = edge;
            }
        }
        return best;
    }

    private static double offMm(Point end, TracedEdge edge) {
        return end.distanceMm(nearestEnd(end, edge));
    }

    private static Point nearestEnd(Point end, TracedEdge edge) {
        return isNearer(end, edge.line()) ? edge.line().start() : edge.line().end();
    }

    private static boolean isNearer(Point end, EdgeLine line) {
        return end.distanceMm(line.start()) <= end.distanceMm(line.end());
    }

    private Optional<List<TracedEdge>> apart(TracedEdge edge, String other, Point nearest) {
        Point end = edge.line().end();
        mistakes.add(
                source.mistake(
                        edge.place(),
                        "the end of `%s` at %s, from which the nearest end of `%s`, at %s, is %s mm off"
                                .formatted(
                                        edge.name(),
                                        shown(end),
                                        other,
                                        shown(nearest),
                                        rounded(end.distanceMm(nearest))),
                        REMEDY));
        return Optional.empty();
    }

    private static String shown(Point point) {
        return "[" + rounded(point.xMm()) + ", " + rounded(point.yMm()) + "] mm";
    }

    private static String rounded(double mm) {
        return String.format(Locale.ROOT, "%.1f", mm);
    }
}
