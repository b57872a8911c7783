package secondbolt.lay.search;

/** How much is tried, in places looked at. */
public enum Effort {
    /** For a first look, and for lengths from the bolt. */
    QUICK("quick", 600_000L),
    /** For a plan to cut from. */
    STEADY("steady", 8_000_000L),
    /** For a cloth that is barely enough. */
    THOROUGH("thorough", 150_000_000L);

    private final String word;
    private final long steps;

    Effort(String word, long steps) {
        this.word = word;
        this.steps = steps;
    }

    /** As written. */
    public String word() {
        return word;
    }

    /** How many places are looked at, at most about. */
    public long steps() {
        return steps;
    }
}
