package secondbolt.bleach.plan;

/** The triangle on a care label. Source: ISO 3758:2012, the bleaching symbols, from memory. */
public enum Triangle {
    /** Any bleach may be used. */
    EMPTY("empty"),
    /** Only oxygen bleach, none with chlorine. */
    TWO_LINES("two lines"),
    /** No bleach at all. */
    CROSSED("crossed");

    private final String word;

    Triangle(String word) {
        this.word = word;
    }

    /** As written. */
    public String word() {
        return word;
    }

    /** Whether it forbids a bleach; of colour removers it says nothing. */
    public boolean forbids(Agent agent) {
        return switch (this) {
            case EMPTY -> false;
            case TWO_LINES -> agent == Agent.CHLORINE;
            case CROSSED -> agent.isBleach();
        };
    }
}
