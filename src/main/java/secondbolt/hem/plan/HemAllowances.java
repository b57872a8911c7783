package secondbolt.hem.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;

/**
 * A pattern whose outlines include the allowance, with what its hems take of it: there the sides
 * are sewn down to the fold of the hem, not to a seam allowance's width from the cut edge.
 */
public final class HemAllowances {
    private HemAllowances() {}

    /**
     * The pattern knowing which edges its hems turn, and with the depths of its hems as allowances,
     * if its outlines include them.
     */
    public static Pattern included(Pattern written, Map<String, Hem> hems, Tape tape) {
        Pattern pattern = written.withTurned(turned(hems));
        if (pattern.allowance().filter(Pattern.Allowance::isIncluded).isEmpty()) {
            return pattern;
        }
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : pattern.pieces()) {
            Map<String, Length> allowances = new LinkedHashMap<>(piece.allowances());
            for (Hem hem : hems.values()) {
                if (hem.turned() != Hem.Turned.FACED && hem.depth().isPresent()) {
                    hem.edges().stream()
                            .filter(edge -> edge.piece().equals(piece.name()))
                            .forEach(edge -> allowances.put(edge.edge(), hem.turnedUp(tape)));
                }
            }
            pieces.add(piece.withAllowances(allowances));
        }
        return pattern.with(pieces);
    }

    private static Set<PieceEdge> turned(Map<String, Hem> hems) {
        return hems.values().stream()
                .flatMap(hem -> hem.edges().stream())
                .map(edge -> new PieceEdge(edge.piece(), edge.edge()))
                .collect(Collectors.toUnmodifiableSet());
    }
}
