package secondbolt.garment;

/** One of the two directions of a cloth. */
public enum Direction {
    /** Crosswise, from selvage to selvage. */
    ACROSS("across"),
    /** Lengthwise, with the selvage. */
    ALONG("along");

    private final String word;

    Direction(String word) {
        this.word = word;
    }

    /** As written. */
    public String word() {
        return word;
    }

    /** As written, so that it may stand in a sentence. */
    @Override
    public String toString() {
        return word;
    }
}
