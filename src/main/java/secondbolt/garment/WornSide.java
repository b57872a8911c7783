package secondbolt.garment;

/** A side of a garment as it is worn, named from the wearer: her left is left. */
public enum WornSide {
    /** The wearer's left. */
    LEFT("left"),
    /** The wearer's right. */
    RIGHT("right"),
    /** Toward her front. */
    FRONT("front"),
    /** Toward her back. */
    BACK("back");

    private final String word;

    WornSide(String word) {
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
