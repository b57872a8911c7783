package secondbolt.textile;

import java.util.Optional;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.Answer;
import secondbolt.garment.Role;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;
import secondbolt.measure.Mass;
import secondbolt.textile.fibre.Fibre;

/**
 * What kind of cloth it is, as the maker wrote it.
 *
 * @param role what it is for; main if not written
 * @param fibre what it is made of
 * @param knownBy how the fibre is known
 * @param weight how heavy by area; not together with {@code mass}
 * @param mass what the whole cloth weighs dry, before anything is trimmed
 * @param nap whether it may be turned; it may if not written
 * @param repeat the distance from one stripe or check to the next
 * @param stretch how far it stretches; as a woven one, not at all, if not told
 */
public record Textile(
        Optional<Role> role,
        Optional<Answer<Fibre>> fibre,
        Optional<KnownBy> knownBy,
        Optional<Answer<ClothWeight>> weight,
        Optional<Answer<Mass>> mass,
        Optional<Nap> nap,
        Repeat repeat,
        Optional<Answer<Stretch>> stretch) {
    /** How the fibre is known. */
    public enum KnownBy {
        /** From the label sewn in. */
        LABEL("label"),
        /** From burning a thread. */
        BURN_TEST("burn test"),
        /** By feel. */
        GUESS("guess");

        private final String word;

        KnownBy(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /** Whether a piece may be turned upside down. */
    public enum Nap {
        /** It may. */
        NONE("none"),
        /** All pieces must lie the same way up: a pile, or a print with a top. */
        ONE_WAY("one-way"),
        /** She does not know: laid one way, which is right for both, and asked. */
        UNKNOWN("unknown");

        private final String word;

        Nap(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /** Whether its pieces are laid the same way up: by a nap, or because it may have one. */
    public boolean isLaidOneWay() {
        return napOrNone() != Nap.NONE;
    }

    /**
     * The distance from one stripe or check to the next.
     *
     * @param along lengthwise
     * @param across crosswise
     * @param begins where one of them begins, on the cloth as measured, if told
     */
    public record Repeat(
            Optional<Length> along, Optional<Length> across, Optional<AcrossAlong<Length>> begins) {
        /** A plain cloth. */
        public static final Repeat NONE =
                new Repeat(Optional.empty(), Optional.empty(), Optional.empty());

        /** Whether there is any. */
        public boolean isAny() {
            return along.isPresent() || across.isPresent();
        }
    }

    /** What it is for, main if not written. */
    public Role roleOrMain() {
        return role.orElse(Role.MAIN);
    }

    /** How far it stretches; not at all if that is not told or not known. */
    public Stretch stretchOrNone() {
        return stretch.flatMap(Answer::toOptional).orElse(Stretch.NONE);
    }

    /** Whether it may be turned, if not written it may. */
    public Nap napOrNone() {
        return nap.orElse(Nap.NONE);
    }
}
