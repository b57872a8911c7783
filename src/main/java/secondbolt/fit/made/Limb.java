package secondbolt.fit.made;

import java.util.Collection;
import java.util.Optional;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.pattern.Meanings;
import secondbolt.pattern.Pattern;
import secondbolt.pattern.piece.Piece;

/** A part of the garment that goes round an arm or a leg, and so is made more than once. */
public enum Limb {
    /** Round an arm. */
    SLEEVE("sleeve"),
    /** Round a leg. */
    LEG("leg");

    private final String word;

    Limb(String word) {
        this.word = word;
    }

    /** Its name. */
    public String word() {
        return word;
    }

    /** What a piece goes round; nothing if it goes round the body. */
    public static Optional<Limb> of(Piece piece, Meanings meanings) {
        if (meanings.has(piece, Serves.CAP) || meanings.has(piece, Serves.UNDERARM)) {
            return Optional.of(SLEEVE);
        }
        return meanings.has(piece, Serves.INSEAM) || meanings.has(piece, Serves.CROTCH)
                ? Optional.of(LEG)
                : Optional.empty();
    }

    /** What pieces that go round together go round; nothing if any of them goes round the body. */
    public static Optional<Limb> of(Collection<String> pieces, Pattern pattern) {
        Optional<Limb> limb = Optional.empty();
        for (String name : pieces) {
            limb = pattern.find(name).flatMap(piece -> of(piece, pattern.meanings()));
            if (limb.isEmpty()) {
                return limb;
            }
        }
        return limb;
    }

    /** How many limbs pieces that go round together make. */
    public static int count(Collection<String> pieces, Pattern pattern) {
        return pieces.stream()
                .flatMap(name -> pattern.find(name).stream())
                .mapToInt(piece -> piece.cuts().values().iterator().next().count())
                .min()
                .orElse(1);
    }

    /** What each limb gets of an amount in all. */
    public static Length each(Length inAll, Collection<String> pieces, Pattern pattern) {
        return inAll.dividedBy(count(pieces, pattern));
    }
}
