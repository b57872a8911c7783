package secondbolt.dye.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.dye.plan.Depth;
import secondbolt.dye.recipe.Recipe;
import secondbolt.dye.recipe.Substance;
import secondbolt.task.Hazard;

/** What is done in the bath, by class. */
final class BathActs {
    private static final String STIR =
            "Turn it over without stopping at first, for the first minutes decide whether it comes"
                    + " out even (15: leaflet of a hand-dye packet; 20: step sheet, reactive dye).";

    private BathActs() {}

    static List<Act> reactive(Recipe recipe, DyePrint print) {
        List<Act> acts = new ArrayList<>();
        acts.add(
                Act.of(
                                "Salt in and dissolved, then the cloth",
                                STIR,
                                note("Heat: ", print.heats(recipe)),
                                note("Times: ", print.times(recipe)))
                        .timed());
        if (recipe.has(Substance.SODA) || recipe.of(Substance.SODA).isEmpty()) {
            acts.add(
                    Act.of(
                                    "Soda ash, dissolved apart, in slowly",
                                    "With the cloth pushed aside, never poured on to it: a third every"
                                            + " five minutes (step sheet, reactive dye in a bath: over"
                                            + " 15 min). From now on the dye bonds.")
                            .minding(Hazard.SODA_ASH));
        }
        acts.add(
                Act.of(
                                "Leave it in, turning it now and then",
                                "All under the bath, no air pockets. It may stand overnight (laboratory"
                                        + " exercise, 2020; leaflet of a hand-dye packet).")
                        .timed());
        return acts;
    }

    static List<Act> direct(Recipe recipe, DyePrint print, Hazard... hot) {
        return List.of(
                Act.of(
                                "The cloth in, and slowly hotter",
                                STIR,
                                note("Heat: ", print.heats(recipe)),
                                note("Times: ", print.times(recipe)))
                        .timed()
                        .minding(hot),
                Act.of(
                        "Salt in two or three parts",
                        "10 to 15 min apart, dissolved, never on to the cloth (laboratory exercise,"
                                + " 2020). All at once drives the dye on in patches."),
                Act.of("Keep it hot, turning it", "Then let it cool in the bath.").timed());
    }

    static List<Act> acid(Recipe recipe, DyePrint print, Optional<Depth> depth, Hazard... hot) {
        boolean isPale = depth.equals(Optional.of(Depth.PALE));
        return List.of(
                Act.of(
                                "The cloth in, and slowly hotter",
                                STIR,
                                note("Heat: ", print.heats(recipe)),
                                note("Times: ", print.times(recipe)))
                        .timed()
                        .minding(hot),
                Act.of(
                                isPale
                                        ? "The acid only after the cloth has soaked in the dye"
                                        : "The acid, thinned, in beside the cloth",
                                isPale
                                        ? "A pale shade goes on unevenly otherwise (F. Beech, The"
                                                + " Dyeing of Woollen Fabrics, 1902)."
                                        : "For a strong colour half at once and half after 15 min (a"
                                                + " dyer's wool method).")
                        .minding(Hazard.ACID),
                Act.of(
                                "Keep it hot until the bath is nearly clear",
                                "Wool is moved gently and never rubbed: heat and rubbing felt it. It"
                                        + " cools in the bath to room temperature (a maker's packet"
                                        + " sheet for acid dye).")
                        .timed());
    }

    static List<Act> byLeaflet(Recipe recipe, DyePrint print, Hazard... hot) {
        return List.of(
                Act.of(
                                "Dye as the packet's leaflet says",
                                "Salt for cotton, linen and viscose, vinegar for wool, silk and polyamide"
                                        + " only if it asks for them. "
                                        + STIR,
                                note("Heat: ", print.heats(recipe)),
                                note("Times: ", print.times(recipe)))
                        .timed()
                        .minding(hot));
    }

    private static String note(String what, String told) {
        return what + (told.isEmpty() ? "as the leaflet says." : told + ".");
    }
}
