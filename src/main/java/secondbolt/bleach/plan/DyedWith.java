package secondbolt.bleach.plan;

/** What a coloured cloth was dyed with, as far as that decides whether a remover takes it out. */
public enum DyedWith {
    /** On cellulose, bound to the fibre. */
    REACTIVE("reactive"),
    /** On cellulose, with salt. */
    DIRECT("direct"),
    /** On wool, silk and polyamide. */
    ACID("acid"),
    /** On polyester and acetate. */
    DISPERSE("disperse"),
    /** Indigo and its like. */
    VAT("vat"),
    /** Glued on, as most prints are. */
    PIGMENT("pigment");

    private final String word;

    DyedWith(String word) {
        this.word = word;
    }

    /** As written. */
    public String word() {
        return word;
    }
}
