package secondbolt.cutting;

import java.util.ArrayList;
import java.util.List;
import secondbolt.shape.Allowance;
import secondbolt.shape.EdgeLine;
import secondbolt.shape.Path;
import secondbolt.shape.Point;

/**
 * The sewing line of a piece, edge by edge. Where the outline includes the allowance, the sewing
 * line lies so far inside, each edge's part ending where it would enter a neighbour's allowance.
 */
final class SewingLine {
    private static final double STEP_MM = 1;
    private static final double NEAR_MM = 0.01;

    private SewingLine() {}

    /** One path or more for every edge that is sewn or turned. */
    static List<Path> of(CutPiece piece) {
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i < piece.edges().size(); i++) {
            if (piece.edges().get(i).kind() == Allowance.Kind.FOLD || piece.widthMm(i) == 0) {
                continue;
            }
            if (piece.isIncluded()) {
                paths.addAll(inside(piece, i));
            } else {
                paths.add(piece.edge(i).path());
            }
        }
        return paths;
    }

    private static List<Path> inside(CutPiece piece, int number) {
        List<Path> paths = new ArrayList<>();
        List<Point> run = new ArrayList<>();
        double lengthMm = piece.edge(number).lengthMm();
        int steps = (int) Math.ceil(lengthMm / STEP_MM);
        for (int i = 0; i <= steps; i++) {
            Point at = piece.onSewingLine(number, lengthMm * i / steps);
            if (isClear(piece, at)) {
                run.add(at);
            } else {
                end(paths, run);
            }
        }
        end(paths, run);
        return paths;
    }

    private static void end(List<Path> paths, List<Point> run) {
        if (run.size() > 1) {
            List<Path.Step> steps = new ArrayList<>();
            run.forEach(p -> steps.add(steps.isEmpty() ? new Path.Move(p) : new Path.Straight(p)));
            paths.add(new Path(steps));
        }
        run.clear();
    }

    private static boolean isClear(CutPiece piece, Point at) {
        for (int i = 0; i < piece.edges().size(); i++) {
            EdgeLine other = piece.edge(i);
            double roomMm = piece.widthMm(i);
            if (other.distanceMm(at) < roomMm - NEAR_MM) {
                return false;
            }
        }
        return true;
    }
}
