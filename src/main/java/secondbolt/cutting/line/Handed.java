package secondbolt.cutting.line;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import secondbolt.garment.Serves;
import secondbolt.pattern.Meanings;
import secondbolt.pattern.piece.DartShape;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;
import secondbolt.shape.Region;

/**
 * Whether a piece is for one hand: not its own mirror image, so that two cut as drawn make two
 * lefts.
 *
 * <p>Derived: a shape that is its own mirror image at an upright or a level axis becomes its mirror
 * image when it is turned half round or not at all, which keeps its grain. Notches and marks are
 * left out, since they can be marked on either side of the cloth; darts and pleats are not.
 */
final class Handed {
    /** Shapes of which a smaller share differs are the same. */
    private static final double SAME_SHARE = 2e-4;

    private static final double SAME_MM = 1;

    /** Edges that a piece not drawn on a fold has at one of its sides only, or shapes unevenly. */
    private static final Set<Serves> ONE_SIDED =
            EnumSet.of(
                    Serves.CENTRE_FRONT,
                    Serves.CENTRE_BACK,
                    Serves.ARMHOLE,
                    Serves.CAP,
                    Serves.INSEAM,
                    Serves.CROTCH);

    private Handed() {}

    /** Whether several are cut of one cloth and the maker does not say which hands they are for. */
    static boolean isAsked(Piece piece) {
        return piece.fold().isEmpty()
                && piece.cuts().values().stream()
                        .anyMatch(c -> c.count() > 1 && c.hands() == Piece.Hands.NOT_TOLD);
    }

    /** Whether a drawn piece is for one hand. */
    static boolean is(CutPiece piece) {
        Point middle = piece.cut().box().middle();
        List<UnaryOperator<Point>> mirrors = new ArrayList<>();
        mirrors.add(p -> new Point(2 * middle.xMm() - p.xMm(), p.yMm()));
        mirrors.add(p -> new Point(p.xMm(), 2 * middle.yMm() - p.yMm()));
        if (piece.piece().grain() == Piece.Grain.ANY) {
            mirrors.add(p -> crossed(p, middle, 1));
            mirrors.add(p -> crossed(p, middle, -1));
        }
        return mirrors.stream().noneMatch(mirror -> isAlike(piece, mirror));
    }

    /** Whether a piece known by tape is; unknown counts as not. */
    static boolean is(Piece taped, Meanings meanings) {
        return ONE_SIDED.stream().anyMatch(serves -> meanings.has(taped, serves));
    }

    private static Point crossed(Point p, Point middle, int way) {
        return middle.moved(way * (p.yMm() - middle.yMm()), way * (p.xMm() - middle.xMm()));
    }

    private static boolean isAlike(CutPiece piece, UnaryOperator<Point> mirror) {
        Outline outline = piece.cut();
        Outline image = outline.map(mirror);
        Box box = image.box();
        if (Math.abs(box.widthMm() - outline.box().widthMm()) > SAME_MM
                || Math.abs(box.heightMm() - outline.box().heightMm()) > SAME_MM) {
            return false;
        }
        double differs = Region.of(outline).minus(Region.of(image)).areaMm2();
        List<Point> taken = taken(piece);
        return differs < SAME_SHARE * outline.areaMm2()
                && taken.stream()
                        .map(mirror)
                        .allMatch(p -> taken.stream().anyMatch(t -> t.distanceMm(p) < SAME_MM));
    }

    /** The corners of its darts, and the ends of its pleats. */
    private static List<Point> taken(CutPiece piece) {
        List<Point> points = new ArrayList<>();
        for (List<Piece.Dart> all :
                List.of(piece.piece().features().darts(), piece.piece().features().pleats())) {
            for (Piece.Dart dart : all) {
                DartShape shape = DartShape.of(piece.shape(), dart);
                points.addAll(List.of(shape.first(), shape.second(), shape.point()));
            }
        }
        return points;
    }
}
