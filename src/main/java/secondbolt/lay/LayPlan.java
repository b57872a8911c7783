package secondbolt.lay;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Placed;
import secondbolt.fit.Piece;
import secondbolt.lay.search.Effort;
import secondbolt.measure.Length;
import secondbolt.shape.Point;

/**
 * How the maker wants her pieces laid, as she wrote it.
 *
 * @param gap what is left between two cutting lines, if told
 * @param effort how much is tried, if told
 * @param grains pieces that may lie otherwise than the pattern says, by name
 * @param designs what the cloth could become, by her names, in her order
 * @param make the design that is worked out, if told
 * @param soFar pieces that are cut already
 */
public record LayPlan(
        Optional<Length> gap,
        Optional<Effort> effort,
        Map<String, Placed<Piece.Grain>> grains,
        Map<String, Design> designs,
        Optional<Placed<String>> make,
        List<CutAlready> soFar) {
    /** Nothing told. */
    public static final LayPlan NONE =
            new LayPlan(
                    Optional.empty(),
                    Optional.empty(),
                    Map.of(),
                    Map.of(),
                    Optional.empty(),
                    List.of());

    /** Copies the maps and the list. */
    public LayPlan {
        grains = Collections.unmodifiableMap(new LinkedHashMap<>(grains));
        designs = Collections.unmodifiableMap(new LinkedHashMap<>(designs));
        soFar = List.copyOf(soFar);
    }

    /**
     * A piece that is cut already; it stays where it is.
     *
     * @param piece its name, with the place it is written at
     * @param cloth the cloth it was cut from
     * @param at where the box round its cutting line begins, on the trimmed and washed cloth
     * @param turnDegrees how far it was turned
     * @param isMirrored whether it is the mirror image
     */
    public record CutAlready(
            Placed<String> piece,
            Placed<String> cloth,
            Point at,
            int turnDegrees,
            boolean isMirrored) {}

    /** The gap, 3 mm if not told; common practice, no source. */
    Length gapOrUsual() {
        return gap.orElse(Length.ofMillimetres(3));
    }

    /** The effort, steady if not told. */
    Effort effortOrSteady() {
        return effort.orElse(Effort.STEADY);
    }

    /** How a piece lies to the grain. */
    Piece.Grain grain(Piece piece) {
        return Optional.ofNullable(grains.get(piece.name()))
                .map(Placed::value)
                .orElse(piece.grain());
    }
}
