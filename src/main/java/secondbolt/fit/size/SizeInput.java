package secondbolt.fit.size;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.PatternSizes;
import secondbolt.wearer.Wearer;
import secondbolt.worksheet.Convention;

/**
 * All that choosing a size needs; what is missing is left out of the result and said there.
 *
 * @param wearer if told
 * @param sizes what the pattern says of them
 * @param pieces what is known of its pieces
 * @param stretch how far the garment stretches round the body, if it does
 * @param tape the maker's
 */
public record SizeInput(
        Optional<Wearer> wearer,
        PatternSizes sizes,
        Pieces pieces,
        Optional<Share> stretch,
        Tape tape) {
    /** The same of woven cloth. */
    SizeInput(Optional<Wearer> wearer, PatternSizes sizes, Pieces pieces, Tape tape) {
        this(wearer, sizes, pieces, Optional.empty(), tape);
    }

    /** A difference that is worth an alteration; a smaller one is left. */
    static final Convention WORTH_IT =
            Convention.common(Length.ofInches(1, 4), Length.ofMillimetres(5));

    /** What the pieces of a pattern make. */
    public enum Made {
        /** What hangs from the shoulders. */
        FROM_THE_SHOULDERS,
        /** What hangs from the waist and has legs. */
        LEGS,
        /** What hangs from the waist and has none. */
        SKIRT,
        /** Their edges do not tell. */
        UNKNOWN
    }

    /**
     * What the size needs to know of a pattern's pieces.
     *
     * @param lines for each length of the body that has one, the lengthen and shorten line it is
     *     altered at
     * @param sides the names of the edges that are sides, in the order of letters
     * @param levels how far down the pieces bust, waist or hip lie, where that is known
     * @param added what the alterations already written add at each measurement, all round or in
     *     length; negative if they take away
     * @param measured what the drawn pieces come to all round, with the alterations they have
     * @param made what they make, as far as their edges tell
     */
    public record Pieces(
            Map<BodyMeasure, String> lines,
            List<String> sides,
            Map<BodyMeasure, Length> levels,
            Map<BodyMeasure, Length> added,
            Map<BodyMeasure, Length> measured,
            Made made) {
        /** Copies all. */
        public Pieces {
            lines = Collections.unmodifiableMap(new LinkedHashMap<>(lines));
            sides = List.copyOf(sides);
            levels = Collections.unmodifiableMap(new LinkedHashMap<>(levels));
            added = Collections.unmodifiableMap(new LinkedHashMap<>(added));
            measured = Collections.unmodifiableMap(new LinkedHashMap<>(measured));
        }

        /** No pieces told. */
        public static Pieces none() {
            return new Pieces(Map.of(), List.of(), Map.of(), Map.of(), Map.of(), Made.UNKNOWN);
        }

        Length added(BodyMeasure measure) {
            return added.getOrDefault(measure, Length.ZERO);
        }
    }

    /**
     * The least difference worth an alteration, and the most by which a body may pass a size and
     * still be that size.
     */
    Length least() {
        return WORTH_IT.on(tape);
    }

    /** A measurement of the wearer, if known. */
    Optional<Length> body(BodyMeasure measure) {
        return wearer.flatMap(w -> w.measure(measure));
    }

    /** Whether the pattern is for the upper body, as far as it and its pieces tell. */
    boolean isUpper() {
        return isMeasured(BodyMeasure.BUST)
                || isMeasured(BodyMeasure.CHEST)
                || pieces.measured().containsKey(BodyMeasure.BUST);
    }

    /**
     * What the pieces make: where a finished bust or chest is told, or the pieces go round it, the
     * garment hangs from the shoulders, whatever its other edges serve.
     */
    Made made() {
        boolean coversTheBust =
                finished(BodyMeasure.BUST).or(() -> finished(BodyMeasure.CHEST)).isPresent();
        return coversTheBust ? Made.FROM_THE_SHOULDERS : pieces.made();
    }

    /**
     * The finished garment with what the alterations add: as it is told, else as its pieces
     * measure. Bust and chest lie at one height.
     */
    Optional<Length> finished(BodyMeasure measure) {
        return Optional.ofNullable(sizes.finished().get(measure))
                .map(told -> told.plus(pieces.added(measure)))
                .or(() -> onPieces(measure));
    }

    private Optional<Length> onPieces(BodyMeasure measure) {
        return Optional.ofNullable(pieces.measured().get(measure))
                .or(
                        () ->
                                measure == BodyMeasure.CHEST
                                        ? onPieces(BodyMeasure.BUST)
                                        : Optional.empty());
    }

    /** Whether the finished garment there is what its pieces measure, and not told. */
    boolean isMeasuredOnPieces(BodyMeasure measure) {
        return !sizes.finished().containsKey(measure) && onPieces(measure).isPresent();
    }

    /** Whether the pattern says anything of a measurement. */
    boolean isMeasured(BodyMeasure measure) {
        return sizes.chart().filter(c -> c.has(measure)).isPresent()
                || sizes.finished().containsKey(measure);
    }
}
