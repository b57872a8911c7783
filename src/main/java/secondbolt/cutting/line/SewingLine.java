package secondbolt.cutting.line;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import secondbolt.shape.Path;
import secondbolt.shape.Point;
import secondbolt.shape.cut.Allowance;
import secondbolt.shape.cut.SewnEdges;

/**
 * The sewing line of a piece, edge by edge. Where the outline includes the allowance, the sewing
 * line lies so far inside, each edge's part ending where it meets its neighbour's.
 */
public final class SewingLine {
    private SewingLine() {}

    /** One path or more for every edge that is sewn or turned. */
    public static List<Path> of(CutPiece piece) {
        return piece.isIncluded() ? inside(piece) : drawn(piece);
    }

    private static List<Path> drawn(CutPiece piece) {
        return sewn(piece).mapToObj(i -> piece.edge(i).path()).toList();
    }

    /** An edge of which its neighbours' allowances leave nothing has no line. */
    private static List<Path> inside(CutPiece piece) {
        List<SewnEdges.Sewn> edges =
                SewnEdges.of(
                        numbers(piece).mapToObj(piece::edge).toList(),
                        numbers(piece).mapToObj(piece::widthMm).toList());
        return sewn(piece)
                .mapToObj(edges::get)
                .filter(edge -> !edge.line().isEmpty())
                .map(edge -> path(edge.line()))
                .toList();
    }

    private static IntStream sewn(CutPiece piece) {
        return numbers(piece)
                .filter(i -> piece.edges().get(i).kind() != Allowance.Kind.FOLD)
                .filter(i -> piece.widthMm(i) > 0);
    }

    private static IntStream numbers(CutPiece piece) {
        return IntStream.range(0, piece.edges().size());
    }

    private static Path path(List<Point> line) {
        List<Path.Step> steps = new ArrayList<>();
        line.forEach(p -> steps.add(steps.isEmpty() ? new Path.Move(p) : new Path.Straight(p)));
        return new Path(steps);
    }
}
