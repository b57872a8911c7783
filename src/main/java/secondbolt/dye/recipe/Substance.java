package secondbolt.dye.recipe;

/** What goes into a bath, or after it. */
public enum Substance {
    /** The dye itself, as powder. */
    DYE("dye"),
    /** Common salt or Glauber's salt. */
    SALT("salt"),
    /** Sodium carbonate. */
    SODA("soda ash"),
    /** Household vinegar of 5 % acetic acid. */
    VINEGAR("vinegar of 5 %"),
    /** The acid that her leaflet names. */
    ACID("acid, as your leaflet names it"),
    /** What fixes direct dye afterwards. */
    FIXATIVE("fixative, in a bath of its own after the rinse");

    private final String word;

    Substance(String word) {
        this.word = word;
    }

    /** As a recipe names it. */
    public String word() {
        return word;
    }
}
