package secondbolt.dye.plan;

/** What kind of dye it is, by how it holds on to a fibre; a packet or its leaflet names it. */
public enum DyeClass {
    /** Bonds with the fibre in an alkaline bath. */
    REACTIVE("reactive"),
    /** Is drawn on to cellulose by salt and heat, and held loosely. */
    DIRECT("direct"),
    /** Is drawn on to wool, silk and polyamide by acid and heat. */
    ACID("acid"),
    /** Dissolves in polyester, acetate and polyamide. */
    DISPERSE("disperse"),
    /** Is made soluble, and fixed by air: indigo. */
    VAT("vat"),
    /** For acrylic. */
    BASIC("basic"),
    /** Several classes in one packet, so that something takes on every fibre. */
    BLEND("household blend");

    private final String word;

    DyeClass(String word) {
        this.word = word;
    }

    /** As written. */
    public String word() {
        return word;
    }

    /** As a sentence speaks of it: {@code reactive dye}. */
    public String dye() {
        return this == BLEND ? "a household blend dye" : word + " dye";
    }
}
