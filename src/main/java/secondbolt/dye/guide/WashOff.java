package secondbolt.dye.guide;

import java.util.List;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.recipe.Tender;
import secondbolt.task.Hazard;

/** How the dye that is not held is washed off, and what is held loosely is fixed. */
public final class WashOff {
    /** Both sides of a belief. */
    public static final String SETTING =
            "Salt or vinegar does not set a colour in the wash. A sewing association (a cup of salt"
                    + " cold, or of vinegar hot) and a school book of the 1910s (a salt soak) advise it;"
                    + " a dyer's reference site says that only hot acid helps, and acid dye alone, and"
                    + " T. de Dillmont's Encyclopedia of Needlework found it useless in trials. It is"
                    + " not advised here.";

    private static final String APART =
            "The first few washes apart (leaflet of a hand-dye packet).";

    private WashOff() {}

    static List<Act> of(DyeClass kind, Tender tender) {
        return switch (kind) {
            case REACTIVE -> reactive(tender);
            case DIRECT -> direct();
            case ACID, BLEND, DISPERSE, VAT, BASIC -> List.of(cool(), dry(tender));
        };
    }

    private static List<Act> reactive(Tender tender) {
        return List.of(
                Act.of("Rinse cool", "Until little colour comes out; it needs no fixative."),
                Act.of(
                                "Soak hot, again and again",
                                "60 °C (140 °F) or hotter, boiling best, with half a teaspoon of"
                                        + " neutral detergent to a pound of cloth; until a damp piece"
                                        + " ironed dry between white cotton leaves no mark (a dyer's"
                                        + " reference site, washing out). Where so hot a wash would"
                                        + " shrink it, one maker allows long cool rinsing.",
                                APART)
                        .timed()
                        .minding(Hazard.HOT_BATH, Hazard.IRON),
                dry(tender));
    }

    private static List<Act> direct() {
        return List.of(
                Act.of("Rinse cool", "Until the water stays nearly clear."),
                Act.of(
                                "Fix it in a bath of its own",
                                "Direct dye runs in every wash without one (a dyer's reference site; a"
                                        + " maker's data sheet). A cationic fixative in warm water, after"
                                        + " the rinse, never in the dye bath, where it would curdle the"
                                        + " dye (from memory). It changes the hue a little and lowers the"
                                        + " fastness to light (Basic Principles of Textile Coloration).")
                        .timed(),
                cool(),
                Act.of("Dry it out of the sun", "Flat or on a line, then press and look it over."));
    }

    private static Act cool() {
        return Act.of(
                "Wash gently, cool",
                "Hot washing is for reactive dye alone (a dyer's reference site, washing out).",
                APART);
    }

    private static Act dry(Tender tender) {
        return Act.of(
                tender.hasHair() ? "Dry it flat" : "Dry it out of the sun",
                tender.hasHair()
                        ? "Wool pressed in a towel, never wrung, no heat; then look it over."
                        : "Flat or on a line, then press and look it over.");
    }
}
