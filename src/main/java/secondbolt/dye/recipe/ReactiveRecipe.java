package secondbolt.dye.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.dye.plan.Depth;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.plan.Heat;
import secondbolt.dye.plan.Lasting;
import secondbolt.dye.plan.Rate;
import secondbolt.dye.take.DyeSources;

/**
 * Cool-water reactive dye on cellulose.
 *
 * <p>The recipes of mills at 60 and 80 °C need caustic soda as well and are none for a home; soda
 * ash alone at their strength gives too little alkali.
 */
final class ReactiveRecipe {
    /** Source: dyer's instruction sheet for cool-water reactive dye. */
    private static final String SHEET = "dyer's instruction sheet, cool-water reactive dye";

    private static final String PACKET = DyeSources.PACKET + ", full shade";

    /**
     * A dye maker's answer, for a pound of cloth in 3 US gallons, dark: 2 cups of salt taken as 580
     * g and a quarter cup of soda ash taken as 60 g, both from memory.
     */
    private static final String MAKER = "a dye maker's answer, cups turned into grams from memory";

    private ReactiveRecipe() {}

    static Recipe of(Optional<Depth> depth, Tender tender) {
        boolean isByLeaflet = tender.isProtein();
        return new Recipe(
                DyeClass.REACTIVE,
                isByLeaflet ? List.of() : depth.map(ReactiveRecipe::lines).orElse(List.of()),
                isByLeaflet ? List.of() : heats(),
                isByLeaflet ? List.of() : times(depth));
    }

    private static List<RecipeLine> lines(Depth depth) {
        List<RecipeLine> lines = new ArrayList<>();
        String dark = SHEET + (depth == Depth.BLACK ? " (heavy; black is not named)" : "");
        switch (depth) {
            case PALE -> {
                lines.add(RecipeLine.percent(Substance.DYE, "0.2", "1", SHEET));
                lines.add(RecipeLine.of(Substance.SALT, Rate.gramsInLitre("20"), SHEET));
                lines.add(RecipeLine.of(Substance.SODA, Rate.gramsInLitre("5"), SHEET));
            }
            case MEDIUM -> {
                lines.add(RecipeLine.percent(Substance.DYE, "2", "3", SHEET));
                lines.add(RecipeLine.of(Substance.SALT, Rate.gramsInLitre("40"), SHEET));
                lines.add(RecipeLine.of(Substance.SODA, Rate.gramsInLitre("10"), SHEET));
            }
            case DARK, BLACK -> {
                lines.add(RecipeLine.percent(Substance.DYE, "6", "8", dark));
                lines.add(RecipeLine.of(Substance.SALT, Rate.gramsInLitre("60"), SHEET));
                lines.add(RecipeLine.of(Substance.SALT, Rate.gramsInLitre("51"), MAKER));
                lines.add(RecipeLine.of(Substance.SALT, Rate.gramsInLitre("41.7"), PACKET));
                lines.add(RecipeLine.of(Substance.SODA, Rate.gramsInLitre("20"), SHEET));
                lines.add(RecipeLine.of(Substance.SODA, Rate.gramsInLitre("5"), MAKER));
            }
        }
        return lines;
    }

    private static List<BathHeat> heats() {
        return List.of(
                BathHeat.of(Heat.ofCelsius(40), "the bath", DyeSources.PACKET),
                new BathHeat(
                        Heat.ofCelsius(30), Heat.ofCelsius(40), "the bath", DyeSources.MEMORY));
    }

    private static List<BathTime> times(Optional<Depth> depth) {
        String sheet = "step sheet, reactive dye in a bath";
        List<BathTime> times = new ArrayList<>();
        times.add(new BathTime("stirring, before the soda", Lasting.minutes(20), sheet));
        times.add(new BathTime("adding the soda ash", Lasting.minutes(15), sheet));
        depth.ifPresent(
                d ->
                        times.add(
                                new BathTime(
                                        "after the soda",
                                        d == Depth.PALE
                                                ? Lasting.minutes(30)
                                                : d == Depth.MEDIUM
                                                        ? new Lasting(30, 60)
                                                        : Lasting.minutes(60),
                                        d == Depth.MEDIUM
                                                ? sheet + ", 30 for pale and 60 for deep"
                                                : sheet)));
        times.add(
                new BathTime(
                        "in all, stirred without stopping for the first 15",
                        Lasting.minutes(60),
                        DyeSources.PACKET));
        return times;
    }
}
