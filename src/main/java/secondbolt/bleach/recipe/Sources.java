package secondbolt.bleach.recipe;

/** Where what is said of bleaches and removers comes from. */
public final class Sources {
    /** A school text in the public domain. */
    public static final String WATSON =
            "K. H. Watson, Textiles and Clothing, American School of Home Economics, 1907";

    /** A mill text in the public domain. */
    public static final String BEECH = "F. Beech, The Dyeing of Cotton Fabrics, 1901";

    /** A refereed study of cotton. */
    public static final String STUDY =
            "L. Simpson Palmer, C. Riggs, Journal of the American Oil Chemists' Society, 1983";

    /** A page of a supplier. */
    public static final String SUPPLIER = "a bleach supplier's laundry page";

    /** Pages on laundry. */
    public static final String LAUNDRY = "laundry pages on bleach";

    /** A household text. */
    public static final String HOUSEHOLD =
            "household text on mildew, probably from a US government leaflet";

    /** A hospital's. */
    public static final String HOSPITAL = "a hospital's bleach procedure";

    /** A seller's. */
    public static final String REMOVER_SHEET = "seller's data sheet, thiourea dioxide";

    /** A refereed study of stripping. */
    public static final String STRIPPING =
            "Fashion and Textiles, 2015, doi 10.1186/s40691-015-0032-y";

    /** Of dyers and colourists. */
    public static final String COLOURISTS =
            "Basic Principles of Textile Coloration, Society of Dyers and Colourists";

    /** A public body. */
    public static final String CDC =
            "Centers for Disease Control and Prevention, Cleaning and Disinfecting with Bleach";

    /** A public body. */
    public static final String POISON_CENTRE =
            "The Poison Control Center, Children's Hospital of Philadelphia, Household Cleaners";

    /** No text was seen. */
    public static final String MEMORY = "from memory";

    /** No text was sought. */
    public static final String COMMON = "common practice, no source";

    private Sources() {}
}
