package secondbolt.lay.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import secondbolt.cutting.line.CutPiece;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.cutting.line.EarlierPiece;
import secondbolt.cutting.line.TapedCut;
import secondbolt.garment.Role;
import secondbolt.pattern.piece.NamedEdge;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * All copies that are cut of one kind of cloth: mirror images as such, pieces on the fold opened
 * out, since worn cloth is cut single.
 *
 * @param cutting the pieces with their cutting lines
 */
public record LayPieces(CuttingResult cutting) {
    /** The mirror image of a point of a piece. */
    public static final UnaryOperator<Point> MIRROR = point -> new Point(-point.xMm(), point.yMm());

    private static final double DUST_MM = 1e-6;
    private static final double SAME_MM = 0.002;
    private static final double ON_FOLD_MM = 0.02;

    /** The copies of a role, those of these pieces only. */
    public List<LayPiece> of(Role role, Predicate<String> isWanted) {
        List<LayPiece> all = new ArrayList<>();
        for (CutPiece cut : cutting.pieces()) {
            if (isWanted.test(cut.name()) && isWhole(cut)) {
                Optional<LayPiece.Opened> opened =
                        fold(cut).map(f -> new LayPiece.Opened(f, half(cut)));
                LayPiece one =
                        whole(cut.piece(), Optional.of(cut), opened, outline(cut), pins(cut));
                all.addAll(copies(one, role));
            }
        }
        for (TapedCut taped : cutting.taped()) {
            if (isWanted.test(taped.piece().name())) {
                Optional<LayPiece.Opened> opened =
                        taped.fold().map(f -> new LayPiece.Opened(f, taped.half()));
                LayPiece one =
                        whole(
                                taped.piece(),
                                Optional.empty(),
                                opened,
                                Outline.of(taped.whole()),
                                List.of());
                all.addAll(copies(one, role));
            }
        }
        return all;
    }

    /** All pieces there are, by name. */
    public Map<String, Piece> byName() {
        Map<String, Piece> pieces = new LinkedHashMap<>();
        Stream.concat(
                        cutting.pieces().stream().map(CutPiece::piece),
                        cutting.taped().stream().map(TapedCut::piece))
                .forEach(piece -> pieces.put(piece.name(), piece));
        return pieces;
    }

    /** A copy in the shape it was cut in; nothing if its cutting line crosses itself. */
    public Optional<Outline> of(EarlierPiece earlier) {
        return earlier.taped()
                .map(taped -> Outline.of(taped.whole()))
                .or(() -> earlier.cut().filter(LayPieces::isWhole).map(LayPieces::outline));
    }

    /** Those of these pieces that cannot be laid: their cutting line crosses itself. */
    public List<String> crossed(Predicate<String> isWanted) {
        return cutting.pieces().stream()
                .filter(cut -> isWanted.test(cut.name()) && !isWhole(cut))
                .map(CutPiece::name)
                .toList();
    }

    /** Whether its cutting line goes round it once, also where it is opened out at a fold. */
    private static boolean isWhole(CutPiece cut) {
        return cut.crossing().isEmpty()
                && (cut.piece().fold().isEmpty() || outline(cut).crossing().isEmpty());
    }

    /** A piece as if one of it were cut. */
    private static LayPiece whole(
            Piece piece,
            Optional<CutPiece> cut,
            Optional<LayPiece.Opened> opened,
            Outline outline,
            List<PinPoint> pins) {
        return new LayPiece(
                piece, cut, 1, 1, false, opened, LayPiece.CutLayers.SINGLE, outline, outline, pins);
    }

    private static List<LayPiece> copies(LayPiece one, Role role) {
        List<LayPiece> copies = new ArrayList<>();
        Optional<Piece.Cut> cut = Optional.ofNullable(one.piece().cuts().get(role));
        int count = cut.map(Piece.Cut::count).orElse(0);
        for (int i = 0; i < count; i++) {
            boolean mirrored = cut.orElseThrow().mirrored() && i % 2 == 1;
            UnaryOperator<Point> side = mirrored ? MIRROR : UnaryOperator.<Point>identity();
            Outline lies = one.outline().map(side);
            copies.add(
                    new LayPiece(
                            one.piece(),
                            one.cut(),
                            i + 1,
                            count,
                            mirrored,
                            one.opened(),
                            LayPiece.CutLayers.SINGLE,
                            lies,
                            lies,
                            one.pins().stream().map(p -> p.moved(side.apply(p.at()))).toList()));
        }
        return copies;
    }

    /** The cutting line, opened out at the fold if it has one. */
    private static Outline outline(CutPiece cut) {
        Optional<EdgeLine> fold = fold(cut);
        if (fold.isEmpty()) {
            return plain(cut.cut());
        }
        Point from = fold.get().start();
        Point to = fold.get().end();
        List<Point> half = offTheFold(cut.cut().corners(), fold.get());
        List<Point> opened = new ArrayList<>(half);
        for (int i = half.size() - 2; i > 0; i--) {
            opened.add(mirrored(half.get(i), from, to));
        }
        return plain(new Outline(opened));
    }

    /** The edge on the fold, if there is one. */
    public static Optional<EdgeLine> fold(CutPiece cut) {
        return cut.piece().fold().flatMap(cut.shape()::find);
    }

    /** The cutting line of the half as drawn; that of the whole if it has no fold. */
    public static Outline half(CutPiece cut) {
        return plain(cut.cut());
    }

    /** Round the half from one end of the fold to the other, both with it. */
    private static List<Point> offTheFold(List<Point> corners, EdgeLine fold) {
        Point from = fold.start();
        Point to = fold.end();
        int count = corners.size();
        int start = 0;
        for (int i = 0; i < count; i++) {
            Point next = corners.get((i + 1) % count);
            if (isOn(corners.get(i), from, to) && !isOn(next, from, to)) {
                start = i;
            }
        }
        List<Point> half = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Point corner = corners.get((start + i) % count);
            half.add(corner);
            if (i > 0 && isOn(corner, from, to)) {
                break;
            }
        }
        return half;
    }

    /** Whether a point lies on the line of the fold, which runs on through the allowances. */
    private static boolean isOn(Point point, Point from, Point to) {
        return mirrored(point, from, to).distanceMm(point) < 2 * ON_FOLD_MM;
    }

    /** Without corners that only the last bits of a double tell from their neighbours. */
    private static Outline plain(Outline outline) {
        List<Point> corners = new ArrayList<>();
        for (Point corner : outline.corners()) {
            if (corners.isEmpty() || corners.get(corners.size() - 1).distanceMm(corner) > SAME_MM) {
                corners.add(corner);
            }
        }
        if (corners.get(0).distanceMm(corners.get(corners.size() - 1)) <= SAME_MM) {
            corners.remove(corners.size() - 1);
        }
        return new Outline(corners);
    }

    /** The mirror image of a point at the line through two others. */
    public static Point mirrored(Point point, Point from, Point to) {
        double dx = to.xMm() - from.xMm();
        double dy = to.yMm() - from.yMm();
        double t =
                ((point.xMm() - from.xMm()) * dx + (point.yMm() - from.yMm()) * dy)
                        / Math.max(dx * dx + dy * dy, DUST_MM);
        double footX = from.xMm() + t * dx;
        double footY = from.yMm() + t * dy;
        return new Point(2 * footX - point.xMm(), 2 * footY - point.yMm());
    }

    /** The two corners farthest apart along the piece; on the fold, its ends. */
    private static List<PinPoint> pins(CutPiece cut) {
        List<PinPoint> corners = corners(cut);
        PinPoint top = corners.get(0);
        PinPoint bottom = corners.get(0);
        for (PinPoint corner : corners) {
            top = corner.at().yMm() < top.at().yMm() - DUST_MM ? corner : top;
            bottom = corner.at().yMm() > bottom.at().yMm() + DUST_MM ? corner : bottom;
        }
        return top.equals(bottom) ? List.of(top) : List.of(top, bottom);
    }

    private static List<PinPoint> corners(CutPiece cut) {
        List<NamedEdge> edges = cut.shape().edges();
        List<PinPoint> corners = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            NamedEdge before = edges.get((i + edges.size() - 1) % edges.size());
            NamedEdge edge = edges.get(i);
            boolean onFold =
                    cut.piece()
                            .fold()
                            .filter(f -> f.equals(before.name()) || f.equals(edge.name()))
                            .isPresent();
            if (cut.piece().fold().isEmpty() || onFold) {
                corners.add(
                        PinPoint.corner(
                                before.name() + " and " + edge.name(), edge.line().start()));
            }
        }
        return corners;
    }
}
