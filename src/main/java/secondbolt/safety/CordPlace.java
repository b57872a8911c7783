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
    NECK(
            "neck",
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
                            "halter"))),
    /** At a hood. */
    HOOD(
            "hood",
            new NameWords(
                    Set.of("hood", "hoods", "huva", "luva", "bonnet"),
                    Set.of("hooded", "hoodie", "kapuz", "capuch", "cappucc", "kaptur"))),
    /** At the waist. */
    WAIST(
            "waist",
            new NameWords(Set.of("vita", "midja"), Set.of("waist", "taille", "cintura", "talia"))),
    /** At the lower edge. */
    HEM(
            "hem",
            new NameWords(
                    Set.of("hem", "bas", "bajo", "orlo", "zoom"),
                    Set.of("hemline", "saum", "ourlet", "dobladillo"))),
    /** Elsewhere, such as at a sleeve, a pocket or a leg. */
    OTHER("other", new NameWords(Set.of(), Set.of()));

    private final String word;
    private final NameWords names;

    CordPlace(String word, NameWords names) {
        this.word = word;
        this.names = names;
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
            if (place.names.isIn(name)) {
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
