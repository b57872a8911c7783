package secondbolt.dye.take;

/**
 * Whether a class of dye takes on a fibre.
 *
 * @param grade how far
 * @param words the condition, or the reason; empty where it simply takes or does not
 * @param source where that comes from
 */
public record Uptake(Grade grade, String words, String source) {
    /** How far a dye takes. */
    public enum Grade {
        /** It takes. */
        TAKES("takes"),
        /** Partly, or only under a condition. */
        PARTLY("takes partly, or only under a condition"),
        /** It does not take. */
        NOT("does not take"),
        /** It harms the fibre. */
        HARMS("is harmed by it");

        private final String words;

        Grade(String words) {
            this.words = words;
        }

        /** As a page says it. */
        public String words() {
            return words;
        }
    }

    /** Whether dye must be weighed for this fibre. */
    public boolean isColoured() {
        return grade == Grade.TAKES || grade == Grade.PARTLY;
    }

    /** Grade and condition in one. */
    public String told() {
        return grade.words() + (words.isEmpty() ? "" : ": " + words);
    }

    static Uptake takes(String source) {
        return new Uptake(Grade.TAKES, "", source);
    }

    static Uptake takes(String words, String source) {
        return new Uptake(Grade.TAKES, words, source);
    }

    static Uptake partly(String words, String source) {
        return new Uptake(Grade.PARTLY, words, source);
    }

    static Uptake not(String source) {
        return new Uptake(Grade.NOT, "", source);
    }

    static Uptake not(String words, String source) {
        return new Uptake(Grade.NOT, words, source);
    }

    static Uptake harms(String words, String source) {
        return new Uptake(Grade.HARMS, words, source);
    }
}
