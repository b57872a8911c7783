package secondbolt.bleach.plan;

/** Whether the cloth has a colour that can be lost. */
public enum Colour {
    /** White, also gone yellow or grey. */
    WHITE("white"),
    /** As it grew or was spun, never dyed. */
    NATURAL("natural"),
    /** Dyed in one colour. */
    DYED("dyed"),
    /** Checked, striped or printed. */
    PATTERNED("patterned");

    private final String word;

    Colour(String word) {
        this.word = word;
    }

    /** As written. */
    public String word() {
        return word;
    }

    /** Whether someone dyed it. */
    public boolean isDyed() {
        return this == DYED || this == PATTERNED;
    }
}
