package secondbolt.wearer;

/**
 * A length of the finished garment that the body has none for.
 *
 * <p>Source of the words: common practice, no source.
 */
public enum GarmentLength implements FinishedMeasure {
    /** Down the centre back of all that is sewn on there. */
    BACK_LENGTH("back length", "from the neck down the centre back to the lower edge", "72"),
    /** Down a sleeve with its cuff. */
    SLEEVE_LENGTH(
            "sleeve length", "from the top of the cap to its lower edge, with the cuff", "60"),
    /** Down a skirt with all its tiers. */
    SKIRT_LENGTH("skirt length", "from the waist seam to the lower edge", "62");

    private final String word;
    private final String taken;
    private final String example;

    GarmentLength(String word, String taken, String example) {
        this.word = word;
        this.taken = taken;
        this.example = example;
    }

    @Override
    public String word() {
        return word;
    }

    /** From where to where it is measured. */
    public String taken() {
        return taken;
    }

    /** A value in centimetres, as of a grown person's garment. */
    String example() {
        return example;
    }
}
