package secondbolt.bleach.plan;

/** What a colour remover is made of. */
public enum Remover {
    /** For which a data sheet gives amounts. */
    THIOUREA_DIOXIDE("thiourea dioxide"),
    /** The older one. */
    DITHIONITE("dithionite"),
    /** A packet that names neither. */
    PACKET("packet");

    private final String word;

    Remover(String word) {
        this.word = word;
    }

    /** As written. */
    public String word() {
        return word;
    }
}
