package secondbolt.lay.placement;

/** What a lay should be like once all items are placed, on as few containers as it takes. */
public enum Goal {
    /** As little length of the last container as can be: for cloth that is still to be bought. */
    SHORT("short"),
    /**
     * As large a rectangle as can be left whole on every container that is used, and then short:
     * for cloth that is there.
     */
    REMNANT("remnant");

    private final String word;

    Goal(String word) {
        this.word = word;
    }

    /** As it is written where lays are kept. */
    public String word() {
        return word;
    }
}
