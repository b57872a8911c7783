package secondbolt.trim.fused;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import secondbolt.cutting.line.EdgeAllowance;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.Piece;
import secondbolt.shape.Box;

/**
 * A piece that is cut of interfacing.
 *
 * @param piece which, after the alterations
 * @param copies how many of it are cut of interfacing
 * @param box how large it is as cut, drawn half if it is
 * @param allowances what lies outside its sewing line, by edge; not on a fold
 */
public record StiffenedPiece(Piece piece, int copies, Box box, Map<String, Length> allowances) {
    /** Copies the allowances in order. */
    public StiffenedPiece {
        allowances = Collections.unmodifiableMap(new LinkedHashMap<>(allowances));
    }

    /** Its name. */
    public String name() {
        return piece.name();
    }

    /** Whether its narrower side is shorter than that. */
    boolean isNarrowerThan(Length length) {
        return Math.min(box.widthMm(), box.heightMm()) < length.millimetres();
    }

    /** What a stiff kind is cut back by, where there is anything to cut. */
    public Map<String, Length> cutBack() {
        Map<String, Length> back = new LinkedHashMap<>(allowances);
        back.values().removeIf(width -> !width.isPositive());
        return back;
    }

    /** What is cut back all round, if it is the same of every edge. */
    public Optional<Length> cutBackAllRound() {
        Map<String, Length> back = cutBack();
        boolean isSame =
                back.size() == allowances.size() && back.values().stream().distinct().count() == 1;
        return isSame ? back.values().stream().findFirst() : Optional.empty();
    }

    static Map<String, Length> of(Iterable<EdgeAllowance> edges, Optional<String> fold) {
        Map<String, Length> allowances = new LinkedHashMap<>();
        for (EdgeAllowance edge : edges) {
            if (fold.filter(edge.edge()::equals).isEmpty()) {
                allowances.put(edge.edge(), edge.width());
            }
        }
        return allowances;
    }
}
