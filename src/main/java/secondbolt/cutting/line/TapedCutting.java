package secondbolt.cutting.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import secondbolt.garment.Serves;
import secondbolt.pattern.Meaning;
import secondbolt.pattern.Meanings;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.Box;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * How a piece known by tape is cut. The tape does not tell where its edges lie in their box, so the
 * widest allowances that they may have at its sides are added: those of edges that run down the
 * piece at its left and right, of edges that run across it at its top and bottom, and of any other
 * edge at either. Common practice, no source: it may be too large, never too small.
 *
 * @param meanings what its edges serve
 * @param allowanceMm of an edge, by its name
 * @param generalMm of an edge that was not taped
 */
record TapedCutting(Meanings meanings, ToDoubleFunction<String> allowanceMm, double generalMm) {
    private static final Set<String> DOWN = Set.of("left", "right", "selvage", "selvedge");
    private static final Set<String> ACROSS = Set.of("top", "bottom", "upper", "lower");

    /** What runs across a piece, at one of its ends. */
    private static final Set<Serves> END =
            EnumSet.of(Serves.HEM, Serves.WAIST, Serves.WRIST, Serves.NECKLINE);

    private static final double SAME_MM = 1;

    /** How an edge runs. */
    private enum Way {
        DOWN,
        ACROSS,
        ANY
    }

    TapedCut of(Piece piece, PieceShape.Taped taped) {
        Optional<Way> fold = piece.fold().map(edge -> foldWay(piece, taped, edge));
        double across = taped.across().millimetres();
        double along = taped.along().millimetres();
        double wideMm = across + addedMm(piece, Way.DOWN, fold.equals(Optional.of(Way.DOWN)));
        double longMm = along + addedMm(piece, Way.ACROSS, fold.equals(Optional.of(Way.ACROSS)));
        Box half = new Box(0, 0, wideMm, longMm);
        if (fold.isEmpty()) {
            return new TapedCut(piece, Outline.of(half), Optional.empty(), half);
        }
        boolean down = fold.get() == Way.DOWN;
        Point end = down ? new Point(0, longMm) : new Point(wideMm, 0);
        Box whole =
                down
                        ? new Box(-wideMm, 0, 2 * wideMm, longMm)
                        : new Box(0, -longMm, wideMm, 2 * longMm);
        EdgeLine line = EdgeLine.straight(Point.ORIGIN, end);
        return new TapedCut(piece, Outline.of(half), Optional.of(line), whole);
    }

    /** A fold lies along a side of the box: along the one that it is as long as, else down it. */
    private Way foldWay(Piece piece, PieceShape.Taped taped, String edge) {
        Way way = way(piece, edge);
        if (way != Way.ANY) {
            return way;
        }
        double lengthMm = taped.edges().get(edge).millimetres();
        double across = taped.across().millimetres();
        double along = taped.along().millimetres();
        boolean isAcross = Math.abs(lengthMm - across) <= SAME_MM;
        boolean isAlong = Math.abs(lengthMm - along) <= SAME_MM;
        boolean tooLong = lengthMm > along + SAME_MM;
        return tooLong || (isAcross && !isAlong) ? Way.ACROSS : Way.DOWN;
    }

    /**
     * What is added at both sides of the box in one direction; at one, if the fold is the other.
     */
    private double addedMm(Piece piece, Way way, boolean isFolded) {
        int sides = isFolded ? 1 : 2;
        List<Double> widths = new ArrayList<>();
        int sure = 0;
        for (String edge : piece.shape().edgeNames()) {
            Way runs = way(piece, edge);
            if (piece.fold().filter(edge::equals).isEmpty() && (runs == way || runs == Way.ANY)) {
                widths.add(allowanceMm.applyAsDouble(edge));
                sure += runs == way ? 1 : 0;
            }
        }
        for (int i = sure; i < sides; i++) {
            widths.add(generalMm);
        }
        widths.sort(Collections.reverseOrder());
        return widths.stream().limit(sides).mapToDouble(width -> width).sum();
    }

    private Way way(Piece piece, String edge) {
        List<String> words = List.of(edge.toLowerCase(Locale.ROOT).split("[\\s_-]+", -1));
        if (words.stream().anyMatch(ACROSS::contains)) {
            return Way.ACROSS;
        }
        if (words.stream().anyMatch(DOWN::contains)) {
            return Way.DOWN;
        }
        return meanings.edge(piece.name(), edge)
                .map(Meaning::serves)
                .map(TapedCutting::way)
                .orElse(Way.ANY);
    }

    private static Way way(Serves serves) {
        if (serves.isLengthwise()) {
            return Way.DOWN;
        }
        return END.contains(serves) ? Way.ACROSS : Way.ANY;
    }
}
