package secondbolt.closure.placket;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import secondbolt.closure.fastening.Overlap;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;

/**
 * What of the pieces lies double where a garment closes, and so does not go round it.
 *
 * @param extensions how far each edge that is drawn to its finished edge runs past the line on
 *     which its two sides meet
 */
public record DrawnLaps(Map<PieceEdge, Length> extensions) {
    /** Nothing laps over. */
    public static final DrawnLaps NONE = new DrawnLaps(Map.of());

    /** Copies the edges. */
    public DrawnLaps {
        extensions = Map.copyOf(extensions);
    }

    /** Of these closures. */
    public static DrawnLaps of(Map<String, Closure> closures) {
        Map<PieceEdge, Length> extensions = new LinkedHashMap<>();
        for (Closure closure : closures.values()) {
            if (isOnThePiece(closure)) {
                closure.placket().edges().stream()
                        .flatMap(on -> on.value().pieceEdges().stream())
                        .forEach(edge -> extensions.put(edge, closure.extension()));
            }
        }
        return new DrawnLaps(extensions);
    }

    private static boolean isOnThePiece(Closure closure) {
        return closure.extension().isPositive()
                && closure.overlap().drawnTo().equals(Optional.of(Overlap.DrawnTo.FINISHED_EDGE));
    }

    /** How far an edge runs past the line, if it is told to. */
    public Optional<Length> past(PieceEdge edge) {
        return Optional.ofNullable(extensions.get(edge));
    }
}
