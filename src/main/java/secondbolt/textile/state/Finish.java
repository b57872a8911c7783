package secondbolt.textile.state;

/** What was put on a cloth by those who made or washed it. */
public enum Finish {
    /** Resin that keeps creases out. */
    EASY_CARE("easy-care"),
    /** What keeps it from burning. */
    FLAME_RETARDANT("flame-retardant"),
    /** What water runs off from. */
    WATER_REPELLENT("water-repellent"),
    /** Starch, size or another dressing that washes out. */
    STARCH("starch");

    private final String word;

    Finish(String word) {
        this.word = word;
    }

    /** As written. */
    public String word() {
        return word;
    }
}
