package secondbolt.lay.plan;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.value.Placed;
import secondbolt.lay.placement.Effort;
import secondbolt.measure.Length;
import secondbolt.pattern.piece.Piece;

/**
 * How the maker wants her pieces laid, as she wrote it.
 *
 * @param rules how they may lie
 * @param designs what the cloth could become, by her names, in her order
 * @param make the design that is worked out, if told
 * @param soFar pieces that are cut already
 * @param pinned pieces that keep their place as long as they can, in her order
 * @param interfacing if told
 */
public record LayPlan(
        Rules rules,
        Map<String, Design> designs,
        Optional<Placed<String>> make,
        List<Placing> soFar,
        List<Placing> pinned,
        Optional<Interfacing> interfacing) {
    /** Nothing told. */
    public static final LayPlan NONE =
            new LayPlan(
                    Rules.NONE, Map.of(), Optional.empty(), List.of(), List.of(), Optional.empty());

    /** Copies the map and the list. */
    public LayPlan {
        designs = Collections.unmodifiableMap(new LinkedHashMap<>(designs));
        soFar = List.copyOf(soFar);
        pinned = List.copyOf(pinned);
    }

    /**
     * The section {@code lay} alone.
     *
     * @param gap what is left between two cutting lines, if told
     * @param effort how much is tried, if told
     * @param layers how the cloth lies when it is cut, with its place, if told
     * @param grains pieces that may lie otherwise than the pattern says, by name
     * @param matches where stripes or checks meet, the most important first
     * @param newCloth cloth as a shop sells it, to compare with, if told
     */
    public record Rules(
            Optional<Length> gap,
            Optional<Effort> effort,
            Optional<Placed<Layers>> layers,
            Map<String, Placed<Piece.Grain>> grains,
            List<Match> matches,
            Optional<NewCloth> newCloth) {
        /** Nothing told. */
        public static final Rules NONE =
                new Rules(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Map.of(),
                        List.of(),
                        Optional.empty());

        /** Copies the map and the list. */
        public Rules {
            grains = Collections.unmodifiableMap(new LinkedHashMap<>(grains));
            matches = List.copyOf(matches);
        }
    }

    /** How the cloth lies when it is cut. */
    public enum Layers {
        /** One layer, so that every flaw is seen. */
        SINGLE("single"),
        /** Two, folded along its length with the right side out. */
        FOLDED("folded lengthwise");

        private final String word;

        Layers(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /**
     * The same, the names of copies, such as {@code front 2}, parted into piece and number.
     *
     * @param pieces the names of the pieces there are
     */
    public LayPlan namedBy(Collection<String> pieces) {
        return new LayPlan(
                rules,
                designs,
                make,
                soFar.stream().map(cut -> cut.namedBy(pieces)).toList(),
                pinned.stream().map(pin -> pin.namedBy(pieces)).toList(),
                interfacing);
    }

    /** The design that is worked out: the one told, or the first; none if none is told. */
    public Optional<String> made() {
        return make.map(Placed::value)
                .filter(designs::containsKey)
                .or(() -> designs.keySet().stream().findFirst());
    }

    /** The gap, 3 mm if not told; common practice, no source. */
    public Length gapOrUsual() {
        return rules.gap().orElse(Length.ofMillimetres(3));
    }

    /** The effort, steady if not told. */
    public Effort effortOrSteady() {
        return rules.effort().orElse(Effort.STEADY);
    }

    /** Whether the cloth is folded for cutting; worn cloth lies single if not told. */
    public boolean isFolded() {
        return rules.layers().filter(layers -> layers.value() == Layers.FOLDED).isPresent();
    }

    /** How a piece lies to the grain. */
    public Piece.Grain grain(Piece piece) {
        return Optional.ofNullable(rules.grains().get(piece.name()))
                .map(Placed::value)
                .orElse(piece.grain());
    }
}
