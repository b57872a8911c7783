package secondbolt.fit.seam;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.NamedEdge;
import secondbolt.pattern.piece.Piece;
import secondbolt.pattern.piece.PieceShape;
import secondbolt.shape.cut.SewnEdges;

/**
 * How long the edges of a piece are along its sewing line: the outline itself, or a line inside it
 * where the outline includes the allowance.
 *
 * @param allowance the pattern's, if told
 */
public record SewnLengths(Optional<Pattern.Allowance> allowance) {
    /** By edge, in drawing order. */
    public Map<String, Length> of(Piece piece) {
        Optional<PieceShape.Drawn> shape = setIn(piece);
        if (shape.isEmpty()) {
            return piece.shape().edgeLengths();
        }
        List<SewnEdges.Sewn> sewn = sewn(piece, shape.get());
        Map<String, Length> lengths = new LinkedHashMap<>();
        for (int i = 0; i < sewn.size(); i++) {
            lengths.put(
                    shape.get().edges().get(i).name(),
                    Length.ofComputedMillimetres(sewn.get(i).lengthMm()));
        }
        return lengths;
    }

    /** An edge as it is sewn; nothing if its sewing line is the edge itself. */
    public Optional<SewnEdges.Sewn> sewn(Piece piece, String edge) {
        return setIn(piece)
                .map(
                        shape -> {
                            List<String> names =
                                    shape.edges().stream().map(NamedEdge::name).toList();
                            return sewn(piece, shape).get(names.indexOf(edge));
                        });
    }

    /** The shape, if its sewing line lies inside it. */
    private Optional<PieceShape.Drawn> setIn(Piece piece) {
        return allowance.filter(Pattern.Allowance::isIncluded).isPresent()
                ? piece.shape().asDrawn()
                : Optional.empty();
    }

    private List<SewnEdges.Sewn> sewn(Piece piece, PieceShape.Drawn shape) {
        return SewnEdges.of(
                shape.edges().stream().map(NamedEdge::line).toList(),
                shape.edges().stream().map(edge -> widthMm(piece, edge.name())).toList());
    }

    private double widthMm(Piece piece, String edge) {
        return piece.allowance(edge, allowance.orElseThrow().of()).millimetres();
    }
}
