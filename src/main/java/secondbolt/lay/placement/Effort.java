package secondbolt.lay.placement;

/** How much is tried, counted in positions looked at. */
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

    /** As the maker writes it. */
    public String word() {
        return word;
    }

    /** How many positions are looked at, at most about. */
    public long steps() {
        return steps;
    }
}
