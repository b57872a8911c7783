package secondbolt.dye.take;

/** The texts that say how cloth is dyed, as pages name them. */
public final class DyeSources {
    /** F. Beech, The Dyeing of Cotton Fabrics, 1901. */
    public static final String COTTON_1901 = "F. Beech, The Dyeing of Cotton Fabrics, 1901";

    /** F. Beech, The Dyeing of Woollen Fabrics, 1902. */
    public static final String WOOL_1902 = "F. Beech, The Dyeing of Woollen Fabrics, 1902";

    /** K. H. Watson, Textiles and Clothing, 1907. */
    public static final String TEXTILES_1907 = "K. H. Watson, Textiles and Clothing, 1907";

    /** Iowa State University Extension, answer on home dyes. */
    public static final String EXTENSION = "Iowa State University Extension, answer on home dyes";

    /** Basic Principles of Textile Coloration, Society of Dyers and Colourists. */
    public static final String COLOURISTS =
            "Basic Principles of Textile Coloration, Society of Dyers and Colourists";

    /** Glossary of dyeing terms for artists, D. Wilson, 2004. */
    public static final String GLOSSARY = "D. Wilson, glossary of dyeing terms for artists, 2004";

    /** Fibre lists of dye sellers. */
    public static final String SELLERS = "fibre lists of dye sellers";

    /** University lecture slides, coloration of technical textiles. */
    public static final String LECTURE = "university lecture on the coloration of textiles";

    /** Home sheet of a maker of direct and acid dyes. */
    public static final String HOME_SHEET = "a maker's home sheet for direct dye";

    /** Data sheet of a maker of direct dye and fixative. */
    public static final String DIRECT_SHEET = "a maker's data sheet for direct dye and fixative";

    /** Data sheet of a maker, wool and polyamide. */
    public static final String WOOL_SHEET = "a maker's data sheet for wool and polyamide";

    /** A seller's acid dye recipes. */
    public static final String ACID_SELLER = "a seller's acid dye recipes";

    /** Trade page on disperse dyes. */
    public static final String DISPERSE_PAGE = "a trade page on disperse dyes";

    /** A theatre costume dyer's answer. */
    public static final String COSTUME_DYER = "a theatre costume dyer's answer";

    /** Leaflet of a hand-dye packet, copied 2010. */
    public static final String PACKET = "leaflet of a hand-dye packet, copied 2010";

    /** Indigo vats: E. Mairet, Vegetable Dyes, and a manual of 1920. */
    public static final String VATS = "E. Mairet, Vegetable Dyes, and a vat manual of 1920";

    /** Text on acrylic dyeing. */
    public static final String ACRYLIC_TEXT = "a text on acrylic dyeing (copy)";

    /** What no text was seen for. */
    public static final String MEMORY = "from memory";

    /** What everybody does. */
    public static final String COMMON = "common practice, no source";

    private DyeSources() {}
}
