package secondbolt.dye.plan;

/** How deep the colour shall be. */
public enum Depth {
    /** A tint, a pastel. */
    PALE("pale"),
    /** Neither. */
    MEDIUM("medium"),
    /** A deep colour such as navy. */
    DARK("dark"),
    /** Black. */
    BLACK("black");

    private final String word;

    Depth(String word) {
        this.word = word;
    }

    /** As written. */
    public String word() {
        return word;
    }

    /** Whether it is dark or black. */
    public boolean isDeep() {
        return this == DARK || this == BLACK;
    }
}
