package secondbolt.garment;

/**
 * What a project becomes. It decides which order of work applies.
 *
 * <p>What a hem is the hem of is another choice, for a sleeve and a curtain have hems as well.
 */
public enum GarmentKind {
    /** A shirt, its sleeves usually sewn in flat. */
    SHIRT("shirt"),
    /** A blouse, its sleeves usually set in round. */
    BLOUSE("blouse"),
    /** A skirt. */
    SKIRT("skirt"),
    /** A dress. */
    DRESS("dress"),
    /** Trousers. */
    TROUSERS("trousers"),
    /** A waistcoat. */
    WAISTCOAT("waistcoat"),
    /** A coat or jacket. */
    COAT("coat"),
    /** An apron. */
    APRON("apron"),
    /** A smock. */
    SMOCK("smock"),
    /** A bag. */
    BAG("bag"),
    /** Something else. */
    OTHER("other");

    private final String word;

    GarmentKind(String word) {
        this.word = word;
    }

    /** As written. */
    public String word() {
        return word;
    }
}
