package secondbolt.hem;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import secondbolt.fit.Pattern;
import secondbolt.fit.Piece;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * A pattern whose outlines include the allowance, with what its hems take of it: there the sides
 * are sewn down to the fold of the hem, not to a seam allowance's width from the cut edge.
 */
public final class HemAllowances {
    private HemAllowances() {}

    /** The pattern with the depths of its hems as allowances, if its outlines include them. */
    public static Pattern included(Pattern pattern, Map<String, Hem> hems, Tape tape) {
        if (pattern.allowance().filter(Pattern.Allowance::isIncluded).isEmpty()) {
            return pattern;
        }
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            Map<String, Length> allowances = new LinkedHashMap<>(piece.allowances());
            for (Hem hem : hems.values()) {
                if (hem.turned() != Hem.Turned.FACED && hem.depth().isPresent()) {
                    hem.pieceEdges().stream()
                            .filter(edge -> edge.piece().equals(piece.name()))
                            .forEach(edge -> allowances.put(edge.edge(), hem.turnedUp(tape)));
                }
            }
            pieces.add(piece.withAllowances(allowances));
        }
        return pattern.with(pieces);
    }
}
