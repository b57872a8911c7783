package secondbolt.lay.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * How a copy lies on the cloth, in the words of the cutting plan: {@code pattern face down, top to
 * the left}.
 *
 * @param layer which layers of the cloth it is cut from
 * @param isFaceDown whether the pattern lies face down, so that the copy is its mirror image;
 *     nothing if that is not told, or makes no difference
 * @param turnDegrees how far it is turned, from across towards along: 0 with its top up, 90 with
 *     its top to the right
 */
public record Lies(Layer layer, Optional<Boolean> isFaceDown, int turnDegrees) {
    private static final String FACE_UP = "face up";
    private static final String FACE_DOWN = "face down";
    private static final Map<Integer, String> TOPS =
            Map.of(
                    0, "top up",
                    45, "top up to the right",
                    90, "top to the right",
                    135, "top down to the right",
                    180, "top down",
                    225, "top down to the left",
                    270, "top to the left",
                    315, "top up to the left");

    /** Which layers of the cloth a copy is cut from. */
    public enum Layer {
        /** The cloth lies single. */
        SINGLE(""),
        /** The cloth lies single, and what is drawn half is opened out. */
        OPENED("opened out"),
        /** Folded, both at once: two copies, one the mirror image of the other. */
        BOTH("both layers"),
        /** Folded, a half on the fold: one copy. */
        ON_FOLD("on the fold"),
        /** Folded, only the upper of the two: one copy. */
        UPPER("upper layer only"),
        /** Folded, only the lower of the two: one copy. */
        LOWER("lower layer only");

        private final String word;

        Layer(String word) {
            this.word = word;
        }

        /** Whether the cloth is folded, and places on it are measured from the fold. */
        public boolean isFolded() {
            return this != SINGLE && this != OPENED;
        }

        private boolean hasFace() {
            return this != OPENED && this != ON_FOLD;
        }
    }

    /** On cloth laid out single. */
    public static Lies single(Optional<Boolean> isFaceDown, int turnDegrees) {
        return new Lies(Layer.SINGLE, isFaceDown, turnDegrees);
    }

    /** The same with the pattern that side up. */
    public Lies facing(boolean isDown) {
        return new Lies(layer, Optional.of(isDown), turnDegrees);
    }

    /** The same from another layer. */
    public Lies from(Layer other) {
        return new Lies(other, isFaceDown, turnDegrees);
    }

    /** As the cutting plan says it. */
    public String words() {
        List<String> words = new ArrayList<>();
        if (layer != Layer.SINGLE) {
            words.add(layer.word);
        }
        if (layer.hasFace()) {
            isFaceDown.ifPresent(down -> words.add("pattern " + (down ? FACE_DOWN : FACE_UP)));
        }
        words.add(TOPS.getOrDefault(turnDegrees, "turned by " + turnDegrees + " degrees"));
        return String.join(", ", words);
    }

    /**
     * From the words of a cutting plan, in any order; {@code pattern} and {@code only} may be left
     * out, and so may the side that is up. The top is up if it is not told where it points.
     *
     * @return nothing if anything else stands there, or two things of one kind
     */
    public static Optional<Lies> parse(String text) {
        Optional<Layer> layer = Optional.empty();
        Optional<Boolean> face = Optional.empty();
        Optional<Integer> turn = Optional.empty();
        for (String part : text.strip().toLowerCase(Locale.ROOT).split(",", -1)) {
            String word = part.strip().replaceAll("\\s+", " ");
            Optional<Layer> ofLayer = layer(word);
            Optional<Boolean> ofFace = face(word);
            Optional<Integer> ofTurn = turn(word);
            boolean isTwice =
                    (ofLayer.isPresent() && layer.isPresent())
                            || (ofFace.isPresent() && face.isPresent())
                            || (ofTurn.isPresent() && turn.isPresent());
            boolean isAny = ofLayer.isPresent() || ofFace.isPresent() || ofTurn.isPresent();
            if (isTwice || !isAny) {
                return Optional.empty();
            }
            layer = layer.or(() -> ofLayer);
            face = face.or(() -> ofFace);
            turn = turn.or(() -> ofTurn);
        }
        return Optional.of(new Lies(layer.orElse(Layer.SINGLE), face, turn.orElse(0)));
    }

    private static Optional<Layer> layer(String word) {
        for (Layer layer : Layer.values()) {
            boolean isIt = word.equals(layer.word) || (word + " only").equals(layer.word);
            if (isIt && !layer.word.isEmpty()) {
                return Optional.of(layer);
            }
        }
        return Optional.empty();
    }

    private static Optional<Boolean> face(String word) {
        return switch (word.startsWith("pattern ") ? word.substring("pattern ".length()) : word) {
            case FACE_UP -> Optional.of(false);
            case FACE_DOWN -> Optional.of(true);
            default -> Optional.empty();
        };
    }

    private static Optional<Integer> turn(String word) {
        return TOPS.entrySet().stream()
                .filter(top -> top.getValue().equals(word))
                .map(Map.Entry::getKey)
                .findFirst();
    }
}
