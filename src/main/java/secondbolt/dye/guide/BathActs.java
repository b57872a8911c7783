package secondbolt.dye.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.dye.plan.Depth;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.recipe.Recipe;
import secondbolt.dye.recipe.Substance;
import secondbolt.task.Hazard;

/** What is done in the bath, by class. */
final class BathActs {
    private static final String STIR =
            "Turn it over without stopping at first, for the first minutes decide whether it comes"
                    + " out even (15: leaflet of a hand-dye packet; 20: step sheet, reactive dye).";

    private static final String BLEND =
            "Salt for cotton, linen and viscose, vinegar for wool, silk and polyamide only if it asks"
                    + " for them. ";

    private BathActs() {}

    /** Whether a thing goes in: by a figure, or because no figure of it is known. */
    private static boolean goesIn(Recipe recipe, Substance what) {
        return recipe.has(what) || recipe.of(what).isEmpty();
    }

    static List<Act> reactive(Recipe recipe, DyePrint print, Hazard... hot) {
        List<Act> acts = new ArrayList<>();
        acts.add(
                Act.of(
                                goesIn(recipe, Substance.SALT)
                                        ? "Salt in and dissolved, then the cloth"
                                        : "The cloth in; no salt, by your leaflet",
                                STIR,
                                note("Heat: ", print.heats(recipe)),
                                note("Times: ", print.times(recipe)))
                        .timed()
                        .minding(hot));
        if (goesIn(recipe, Substance.SODA)) {
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
        List<Act> acts = new ArrayList<>();
        acts.addAll(acidByLeaflet(recipe));
        if (recipe.has(Substance.SODA)) {
            acts.add(
                    Act.of(
                                    "Soda ash, if you use any, into the bath before the cloth",
                                    "Dissolved apart first; home sheets leave it out.")
                            .minding(Hazard.SODA_ASH));
        }
        acts.addAll(heated(recipe, print, hot));
        return acts;
    }

    /** An acid that only her leaflet asks for. */
    private static List<Act> acidByLeaflet(Recipe recipe) {
        return recipe.has(Substance.ACID)
                ? List.of(
                        Act.of(
                                        "The acid that your leaflet asks for",
                                        "When and how it says; thinned, never together with soda ash,"
                                                + " which it would use up.")
                                .minding(Hazard.ACID))
                : List.of();
    }

    private static List<Act> heated(Recipe recipe, DyePrint print, Hazard... hot) {
        List<Act> acts = new ArrayList<>();
        acts.add(
                Act.of(
                                "The cloth in, and slowly hotter",
                                STIR,
                                note("Heat: ", print.heats(recipe)),
                                note("Times: ", print.times(recipe)))
                        .timed()
                        .minding(hot));
        if (goesIn(recipe, Substance.SALT)) {
            acts.add(
                    Act.of(
                            "Salt in two or three parts",
                            "10 to 15 min apart, dissolved, never on to the cloth (laboratory"
                                    + " exercise, 2020). All at once drives the dye on in patches."));
        }
        acts.add(Act.of("Keep it hot, turning it", "Then let it cool in the bath.").timed());
        return acts;
    }

    static List<Act> acid(Recipe recipe, DyePrint print, Optional<Depth> depth, Hazard... hot) {
        List<Act> acts = new ArrayList<>();
        if (recipe.has(Substance.SODA)) {
            acts.add(
                    Act.of(
                                    "Soda ash only if your leaflet names this fibre",
                                    "Alkali harms wool and silk, and it uses up the acid that fixes"
                                            + " this dye (K. H. Watson, Textiles and Clothing, 1907;"
                                            + " the rest derived).")
                            .minding(Hazard.SODA_ASH));
        }
        acts.add(
                Act.of(
                                "The cloth in, and slowly hotter",
                                STIR,
                                note("Heat: ", print.heats(recipe)),
                                note("Times: ", print.times(recipe)))
                        .timed()
                        .minding(hot));
        if (recipe.has(Substance.ACID)
                || recipe.has(Substance.VINEGAR)
                || recipe.of(Substance.ACID).isEmpty()) {
            acts.add(acidIn(depth.equals(Optional.of(Depth.PALE))));
        }
        acts.add(
                Act.of(
                                "Keep it hot until the bath is nearly clear",
                                "Wool is moved gently and never rubbed: heat and rubbing felt it. It"
                                        + " cools in the bath to room temperature (a maker's packet"
                                        + " sheet for acid dye).")
                        .timed());
        return acts;
    }

    private static Act acidIn(boolean isPale) {
        return Act.of(
                        isPale
                                ? "The acid only after the cloth has soaked in the dye"
                                : "The acid, thinned, in beside the cloth",
                        isPale
                                ? "A pale shade goes on unevenly otherwise (F. Beech, The"
                                        + " Dyeing of Woollen Fabrics, 1902)."
                                : "For a strong colour half at once and half after 15 min (a"
                                        + " dyer's wool method).")
                .minding(Hazard.ACID);
    }

    static List<Act> byLeaflet(Recipe recipe, DyePrint print, Hazard... hot) {
        return List.of(
                Act.of(
                                "Dye as the packet's leaflet says",
                                (recipe.kind() == DyeClass.BLEND ? BLEND : "") + STIR,
                                note("Heat: ", print.heats(recipe)),
                                note("Times: ", print.times(recipe)))
                        .timed()
                        .minding(hot));
    }

    private static String note(String what, String told) {
        return what + (told.isEmpty() ? "as the leaflet says." : told + ".");
    }
}
