package secondbolt.dye.guide;

import java.util.ArrayList;
import java.util.List;
import secondbolt.dye.recipe.Recipe;
import secondbolt.dye.recipe.Substance;
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

    private static final String UNTIL =
            " until a damp piece ironed dry between white cotton leaves no mark (a dyer's reference"
                    + " site, washing out).";

    private WashOff() {}

    static List<Act> of(Recipe recipe, Tender tender, HotSoak soak) {
        return switch (recipe.kind()) {
            case REACTIVE ->
                    tender.isProtein() ? List.of(cool(), dry(tender)) : reactive(tender, soak);
            case DIRECT -> direct(recipe, tender);
            case ACID, BLEND, DISPERSE, VAT, BASIC -> List.of(cool(), dry(tender));
        };
    }

    private static List<Act> reactive(Tender tender, HotSoak soak) {
        return List.of(
                Act.of("Rinse cool", "Until little colour comes out; it needs no fixative."),
                soak.isBorne() ? hot() : warm(soak),
                dry(tender));
    }

    private static Act hot() {
        return Act.of(
                        "Soak hot, again and again",
                        "60 °C (140 °F) or hotter, boiling best, with half a teaspoon of neutral"
                                + " detergent to a pound of cloth;"
                                + UNTIL
                                + " Where so hot a wash would shrink it, one maker allows long cool"
                                + " rinsing.",
                        APART)
                .timed()
                .minding(Hazard.HOT_BATH, Hazard.IRON);
    }

    private static Act warm(HotSoak soak) {
        return Act.of(
                        "Soak as warm as the cloth bears, again and again",
                        "Reactive dye washes off best at 60 °C (140 °F) or hotter, but here at most: "
                                + soak.words()
                                + ". So stay there, soak longer and more often, with half a teaspoon"
                                + " of neutral detergent to a pound of cloth,"
                                + UNTIL
                                + " One maker allows long cool rinsing instead. Iron that piece no"
                                + " hotter than its cloth bears.",
                        APART)
                .timed()
                .minding(Hazard.IRON);
    }

    private static List<Act> direct(Recipe recipe, Tender tender) {
        List<Act> acts = new ArrayList<>();
        acts.add(Act.of("Rinse cool", "Until the water stays nearly clear."));
        if (recipe.has(Substance.FIXATIVE) || recipe.of(Substance.FIXATIVE).isEmpty()) {
            acts.add(
                    Act.of(
                                    "Fix it in a bath of its own",
                                    "Direct dye runs in every wash without one (a dyer's reference"
                                            + " site; a maker's data sheet). A cationic fixative in"
                                            + " warm water, after the rinse, never in the dye bath,"
                                            + " where it would curdle the dye (from memory). It changes"
                                            + " the hue a little and lowers the fastness to light"
                                            + " (Basic Principles of Textile Coloration).")
                            .timed());
        }
        acts.add(cool());
        acts.add(dry(tender));
        return acts;
    }

    private static Act cool() {
        return Act.of(
                "Rinse, then wash gently, cool",
                "Hot washing is for reactive dye on plant fibres alone (a dyer's reference site,"
                        + " washing out), never for wool and silk.",
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
