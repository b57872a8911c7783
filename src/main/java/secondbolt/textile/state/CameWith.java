package secondbolt.textile.state;

/** What a second-hand cloth may have come with, that is dealt with before it is cut. */
public enum CameWith {
    /** Moths or other insects, or their holes and webs. */
    MOTHS("moths"),
    /** Mildew: spots, or its smell. */
    MILDEW("mildew"),
    /** Seams and hems of what it was before. */
    OLD_SEAMS("old seams"),
    /** Fabric softener. */
    SOFTENER("softener"),
    /** Camphor, or other balls against moths. */
    CAMPHOR("camphor");

    private final String word;

    CameWith(String word) {
        this.word = word;
    }

    /** As written. */
    public String word() {
        return word;
    }
}
