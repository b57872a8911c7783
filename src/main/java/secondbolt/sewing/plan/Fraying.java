package secondbolt.sewing.plan;

/**
 * How a cloth frays at a cut edge, by the test: rub it twenty times between the fingers.
 *
 * <p>Source of the test: common practice, no source.
 */
public enum Fraying {
    /** Threads hang out by more than 3 mm (1/8 in). */
    MUCH("much"),
    /** Threads come out, by 3 mm (1/8 in) at most. */
    LITTLE("little"),
    /** Hardly a thread comes out. */
    HARDLY("hardly");

    private final String word;

    Fraying(String word) {
        this.word = word;
    }

    /** As written. */
    public String word() {
        return word;
    }
}
