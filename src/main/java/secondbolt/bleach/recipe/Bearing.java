package secondbolt.bleach.recipe;

import secondbolt.textile.fibre.FibreKind;

/**
 * What a fibre bears.
 *
 * @param fibre which
 * @param grade how well
 * @param why in words that go on after its name
 * @param source where that comes from
 */
public record Bearing(FibreKind fibre, Grade grade, String why, String source) {
    /** How well a fibre bears it, best first. */
    public enum Grade {
        /** It does. */
        BEARS("bears it"),
        /** It does, if something is minded. */
        WITH_CARE("with care"),
        /** Nobody can tell. */
        NOT_KNOWN("not known"),
        /** It does not. */
        RUINED("ruins it");

        private final String words;

        Grade(String words) {
            this.words = words;
        }

        /** In two words, for a table. */
        public String words() {
            return words;
        }
    }

    static Bearing bears(FibreKind fibre, String why, String source) {
        return new Bearing(fibre, Grade.BEARS, why, source);
    }

    static Bearing withCare(FibreKind fibre, String why, String source) {
        return new Bearing(fibre, Grade.WITH_CARE, why, source);
    }

    static Bearing ruined(FibreKind fibre, String why, String source) {
        return new Bearing(fibre, Grade.RUINED, why, source);
    }

    static Bearing notKnown(FibreKind fibre) {
        return new Bearing(
                fibre,
                Grade.NOT_KNOWN,
                "is not named by its label, and may be the most tender of all",
                Sources.COMMON);
    }
}
