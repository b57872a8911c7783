package secondbolt.sewing.plan;

/** What a sewing thread is made of. */
public enum ThreadFibre {
    /** The commonest; it gives a little, and no dye for cotton or wool takes on it. */
    POLYESTER("polyester"),
    /** It takes the dye of cotton, and gives hardly at all. */
    COTTON("cotton"),
    /** For silk and wool; it takes their dye. */
    SILK("silk");

    private final String word;

    ThreadFibre(String word) {
        this.word = word;
    }

    /** As written. */
    public String word() {
        return word;
    }
}
