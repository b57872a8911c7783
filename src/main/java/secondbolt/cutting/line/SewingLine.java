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
        List<Path> lines = piece.isIncluded() ? inside(piece) : drawn(piece);
        return IntStream.range(0, lines.size())
                .filter(i -> piece.edges().get(i).kind() != Allowance.Kind.FOLD)
                .filter(i -> piece.widthMm(i) > 0 && !lines.get(i).steps().isEmpty())
                .mapToObj(lines::get)
                .toList();
    }

    private static List<Path> drawn(CutPiece piece) {
        return numbers(piece).mapToObj(i -> piece.edge(i).path()).toList();
    }

    private static List<Path> inside(CutPiece piece) {
        return SewnEdges.of(
                        numbers(piece).mapToObj(piece::edge).toList(),
                        numbers(piece).mapToObj(piece::widthMm).toList())
                .stream()
                .map(edge -> path(edge.line()))
                .toList();
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
