package secondbolt.dye.take;

import secondbolt.textile.fibre.FibreKind.Family;

/** What vat, basic and household blend dyes do on each fibre. */
final class OtherUptakes {
    private OtherUptakes() {}

    static Uptake vat(Family fibre) {
        return switch (fibre) {
            case PLANT -> Uptake.takes(DyeSources.LECTURE);
            case REGENERATED -> Uptake.takes(DyeSources.MEMORY);
            case SILK ->
                    Uptake.harms(
                            "alkali harms silk, unless the kit is a mild one for silk",
                            DyeSources.TEXTILES_1907);
            case HAIR -> Uptake.harms("a caustic vat harms wool and other hair", DyeSources.VATS);
            case ACETATE -> Uptake.harms("alkali harms acetate", DyeSources.MEMORY);
            case POLYAMIDE, POLYESTER, ACRYLIC, ELASTANE, POLYPROPYLENE ->
                    Uptake.not(DyeSources.MEMORY);
            case OTHER -> UptakeTable.nameless();
        };
    }

    static Uptake basic(Family fibre) {
        return switch (fibre) {
            case PLANT -> Uptake.not("without tannin", DyeSources.COTTON_1901);
            case SILK -> Uptake.takes("poor in light", DyeSources.MEMORY);
            case HAIR -> Uptake.takes(DyeSources.WOOL_1902);
            case ACRYLIC ->
                    Uptake.takes(
                            "cool it slowly from 80 to 50 °C, for fast cooling marks it",
                            DyeSources.LECTURE + "; " + DyeSources.ACRYLIC_TEXT);
            case POLYAMIDE -> Uptake.not("but special kinds", DyeSources.COLOURISTS);
            case REGENERATED, POLYESTER, ACETATE, ELASTANE, POLYPROPYLENE ->
                    Uptake.not(DyeSources.MEMORY);
            case OTHER -> UptakeTable.nameless();
        };
    }

    static Uptake blend(Family fibre) {
        return switch (fibre) {
            case PLANT, REGENERATED -> Uptake.partly("its direct part only", DyeSources.EXTENSION);
            case SILK, HAIR -> Uptake.takes(DyeSources.PACKET);
            case POLYAMIDE ->
                    Uptake.partly(
                            "the leaflet of one hand-dye packet says that it does not, so look"
                                    + " whether yours names it",
                            DyeSources.MEMORY + "; " + DyeSources.PACKET);
            case ACETATE -> Uptake.partly("a little", DyeSources.MEMORY);
            case POLYESTER -> Uptake.not(DyeSources.COSTUME_DYER);
            case ACRYLIC -> Uptake.not(DyeSources.PACKET);
            case ELASTANE, POLYPROPYLENE -> Uptake.not(DyeSources.MEMORY);
            case OTHER -> UptakeTable.nameless();
        };
    }
}
