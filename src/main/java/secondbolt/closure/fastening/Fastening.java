package secondbolt.closure.fastening;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.worksheet.Convention;

/**
 * What a closure closes with.
 *
 * @param kind buttons or another kind
 * @param button which, if it is buttons
 * @param across how wide one is along the placket, if it is not buttons and was told
 * @param ease what holes are made longer for thick cloth, if told
 * @param holes which way most holes run
 * @param differing which way holes run that differ, by their number from the top
 */
public record Fastening(
        Kind kind,
        Optional<Button> button,
        Optional<Length> across,
        Optional<Length> ease,
        Holes holes,
        Map<Integer, Holes> differing) {
    /** What holes are made longer for thick cloth. */
    public static final Convention USUAL_EASE =
            new Convention(
                    Length.ofInches(1, 8), Length.ofMillimetres(3), "Extension Bulletin 576");

    /**
     * A level hole as it is worked, or half of it and what an upright one below it reaches up:
     * common practice, no source.
     */
    private static final Length LEVEL_APART = Length.ofMillimetres(6);

    /** Copies the map. */
    public Fastening {
        differing = Collections.unmodifiableMap(new LinkedHashMap<>(differing));
        if ((kind == Kind.BUTTONS) != button.isPresent()) {
            throw new IllegalArgumentException("buttons, and only they, need a button: " + kind);
        }
    }

    /** The kinds there are. */
    public enum Kind {
        /** Buttons and buttonholes. */
        BUTTONS("buttons", "button"),
        /** Press fasteners sewn on in halves. */
        SNAPS("snaps", "snap"),
        /** Hooks with eyes or bars. */
        HOOKS("hooks", "hook"),
        /** Pairs of ties. */
        TIES("ties", "tie");

        private final String word;
        private final String one;

        Kind(String word, String one) {
            this.word = word;
            this.one = one;
        }

        /** As written. */
        public String word() {
            return word;
        }

        /** A single one. */
        public String one() {
            return one;
        }
    }

    /** Which way buttonholes run. */
    public enum Holes {
        /** Along the centre line. */
        UPRIGHT(
                "upright",
                "dressmakers' association standards; one pattern designer centres the hole on the"
                        + " button instead"),
        /** At right angles to the edge. */
        LEVEL("level", "Buttons and Buttonholes, Extension Bulletin 576, 1965");

        private final String word;
        private final String source;

        Holes(String word, String source) {
            this.word = word;
            this.source = source;
        }

        /** As written. */
        public String word() {
            return word;
        }

        /**
         * How far a hole reaches past the button's centre: above it if upright, toward the edge if
         * level.
         */
        public Convention reach() {
            return new Convention(Length.ofInches(1, 8), Length.ofMillimetres(3), source);
        }
    }

    /** Whether holes are worked for it. */
    public boolean hasHoles() {
        return kind == Kind.BUTTONS;
    }

    /** Which way a hole runs, by its number from the top. */
    public Holes holes(int number) {
        return differing.getOrDefault(number, holes);
    }

    /** The length of its holes, with the ease; nothing if it has none. */
    public Length hole() {
        return button.map(b -> b.hole().plus(ease.orElse(Length.ZERO))).orElse(Length.ZERO);
    }

    /** How wide one is, if known. */
    public Optional<Length> width() {
        return button.isPresent() ? button.get().across() : across;
    }

    /** How far apart two must be at least, so that neither they nor their holes touch. */
    public Length apart() {
        Length width = width().orElse(hole());
        if (!hasHoles()) {
            return width.orLonger(Length.ofMillimetres(1));
        }
        Length apart = width.orLonger(LEVEL_APART);
        return hasAnyUpright() ? apart.orLonger(hole()) : apart;
    }

    /** Whether any hole but the last may run down toward the next one. */
    private boolean hasAnyUpright() {
        return holes == Holes.UPRIGHT || differing.containsValue(Holes.UPRIGHT);
    }
}
