package secondbolt.dye.take;

import secondbolt.dye.plan.DyeClass;
import secondbolt.textile.fibre.FibreKind.Family;

/**
 * Which class of dye takes on which fibre. What a label does not name takes nothing for certain, so
 * no dye is weighed for it.
 */
public final class UptakeTable {
    private static final Uptake NAMELESS =
            Uptake.not("what a label does not name may take, or not", DyeSources.MEMORY);

    private UptakeTable() {}

    /** Whether the class takes on the fibre. */
    public static Uptake of(DyeClass kind, Family fibre) {
        return switch (kind) {
            case REACTIVE -> reactive(fibre);
            case DIRECT -> direct(fibre);
            case ACID -> acid(fibre);
            case DISPERSE -> disperse(fibre);
            case VAT -> OtherUptakes.vat(fibre);
            case BASIC -> OtherUptakes.basic(fibre);
            case BLEND -> OtherUptakes.blend(fibre);
        };
    }

    /** What is told of a fibre without a name. */
    static Uptake nameless() {
        return NAMELESS;
    }

    private static Uptake reactive(Family fibre) {
        return switch (fibre) {
            case PLANT, REGENERATED -> Uptake.takes(DyeSources.SELLERS);
            case SILK ->
                    Uptake.partly(
                            "its alkali harms silk, so only by a leaflet that names silk",
                            DyeSources.TEXTILES_1907 + "; " + DyeSources.SELLERS);
            case HAIR ->
                    Uptake.harms(
                            "its alkali harms wool and other hair",
                            DyeSources.TEXTILES_1907 + "; " + DyeSources.WOOL_1902);
            case POLYAMIDE ->
                    Uptake.partly("only by a leaflet that names polyamide", DyeSources.SELLERS);
            case POLYESTER -> Uptake.not(DyeSources.GLOSSARY);
            case ACETATE -> Uptake.harms("hot alkali harms acetate", DyeSources.COLOURISTS);
            case ACRYLIC, POLYPROPYLENE, ELASTANE -> Uptake.not(DyeSources.MEMORY);
            case OTHER -> NAMELESS;
        };
    }

    private static Uptake direct(Family fibre) {
        return switch (fibre) {
            case PLANT -> Uptake.takes(DyeSources.COTTON_1901);
            case REGENERATED -> Uptake.takes("laboratory note on direct dye, 2024");
            case SILK -> Uptake.takes(DyeSources.COTTON_1901 + "; " + DyeSources.DIRECT_SHEET);
            case HAIR ->
                    Uptake.partly(
                            "below the boil, and without acid, it takes little",
                            DyeSources.WOOL_1902);
            case POLYAMIDE -> Uptake.partly("by its leaflet", DyeSources.DIRECT_SHEET);
            case POLYESTER -> Uptake.not(DyeSources.COSTUME_DYER);
            case ACETATE -> Uptake.not(DyeSources.COLOURISTS);
            case ACRYLIC, POLYPROPYLENE -> Uptake.not(DyeSources.MEMORY);
            case ELASTANE -> Uptake.not("and heat harms it", DyeSources.MEMORY);
            case OTHER -> NAMELESS;
        };
    }

    private static Uptake acid(Family fibre) {
        return switch (fibre) {
            case PLANT -> Uptake.not("a tint at most", DyeSources.COTTON_1901);
            case REGENERATED -> Uptake.not(DyeSources.MEMORY);
            case SILK -> Uptake.takes(DyeSources.COTTON_1901);
            case HAIR -> Uptake.takes(DyeSources.WOOL_1902);
            case POLYAMIDE -> Uptake.takes(DyeSources.WOOL_SHEET);
            case POLYESTER, ACRYLIC -> Uptake.not(DyeSources.ACID_SELLER);
            case ACETATE -> Uptake.not(DyeSources.COLOURISTS);
            case ELASTANE, POLYPROPYLENE ->
                    Uptake.not("or little, and heat harms it", DyeSources.MEMORY);
            case OTHER -> NAMELESS;
        };
    }

    private static Uptake disperse(Family fibre) {
        return switch (fibre) {
            case PLANT, REGENERATED, SILK, HAIR -> Uptake.not(DyeSources.DISPERSE_PAGE);
            case POLYAMIDE ->
                    Uptake.takes(
                            "at or below 100 °C, of middling fastness in the wash",
                            DyeSources.GLOSSARY);
            case POLYESTER ->
                    Uptake.takes(
                            "only with a packet for polyester, by its leaflet",
                            DyeSources.GLOSSARY);
            case ACETATE -> Uptake.takes(DyeSources.COLOURISTS);
            case ACRYLIC -> Uptake.partly("pale", DyeSources.MEMORY);
            case ELASTANE, POLYPROPYLENE ->
                    Uptake.not("or little, and heat harms it", DyeSources.MEMORY);
            case OTHER -> NAMELESS;
        };
    }
}
