package secondbolt.safety;

import java.util.Optional;
import java.util.Set;
import secondbolt.garment.Serves;

/**
 * Where a cord lies on the body. The words by which a name tells it, in a few languages: common
 * practice, no source.
 */
enum CordPlace {
    /** Round or at the neck. */
    NECK("neck"),
    /** At a hood. */
    HOOD("hood"),
    /** At the waist. */
    WAIST("waist"),
    /** At the lower edge. */
    HEM("hem"),
    /** Elsewhere, such as at a sleeve, a pocket or a leg. */
    OTHER("other");

    private final String word;

    CordPlace(String word) {
        this.word = word;
    }

    /** What tells it in a name. */
    private NameWords names() {
        return switch (this) {
            case NECK ->
                    new NameWords(
                            Set.of("cou", "col"),
                            Set.of(
                                    "neck",
                                    "collar",
                                    "hals",
                                    "kragen",
                                    "nacken",
                                    "encolure",
                                    "cuello",
                                    "escote",
                                    "scollo",
                                    "collo",
                                    "colletto",
                                    "halter"));
            case HOOD ->
                    new NameWords(
                            Set.of("hood", "hoods", "huva", "luva", "bonnet"),
                            Set.of("hooded", "hoodie", "kapuz", "capuch", "cappucc", "kaptur"));
            case WAIST ->
                    new NameWords(
                            Set.of("vita", "midja"), Set.of("waist", "taille", "cintura", "talia"));
            case HEM ->
                    new NameWords(
                            Set.of("hem", "bas", "bajo", "orlo", "zoom"),
                            Set.of("hemline", "saum", "ourlet", "dobladillo"));
            case OTHER -> new NameWords(Set.of(), Set.of());
        };
    }

    /** As written. */
    String word() {
        return word;
    }

    /** Whether a cord here can strangle. */
    boolean isAtTheNeck() {
        return this == NECK || this == HOOD;
    }

    /** Where a name says that it lies, the most dangerous place first. */
    static Optional<CordPlace> named(String name) {
        for (CordPlace place : values()) {
            if (place.names().isIn(name)) {
                return Optional.of(place);
            }
        }
        return Optional.empty();
    }

    /** Where an edge lies, by what it serves. */
    static Optional<CordPlace> serving(Serves serves) {
        return switch (serves) {
            case NECKLINE -> Optional.of(NECK);
            case WAIST -> Optional.of(WAIST);
            case HEM -> Optional.of(HEM);
            default -> Optional.empty();
        };
    }
}
