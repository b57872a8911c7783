package secondbolt.dye.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.plan.DyePlan;
import secondbolt.dye.plan.Leaflet;
import secondbolt.dye.plan.Rate;
import secondbolt.file.value.Placed;
import secondbolt.measure.Share;

/** Her own figures in place of the published ones. */
final class HerRecipe {
    private static final String LEAFLET = "your packet's leaflet";
    private static final String CHOICE = "your own choice";

    private HerRecipe() {}

    static Recipe over(Recipe published, DyePlan plan) {
        if (published.kind() == DyeClass.VAT) {
            return published;
        }
        Leaflet leaflet = plan.leaflet();
        Recipe recipe = published.replacing(lines(plan));
        List<BathHeat> heats =
                leaflet.heat()
                        .map(heat -> List.of(BathHeat.of(heat, "the bath", LEAFLET)))
                        .orElse(recipe.heats());
        List<BathTime> times =
                leaflet.time()
                        .map(time -> List.of(new BathTime("in the bath", time, LEAFLET)))
                        .orElse(recipe.times());
        return new Recipe(recipe.kind(), recipe.lines(), heats, times);
    }

    private static List<RecipeLine> lines(DyePlan plan) {
        Leaflet.Amounts amounts = plan.leaflet().amounts();
        List<RecipeLine> hers = new ArrayList<>();
        add(hers, Substance.DYE, amounts.dye());
        if (amounts.dye().isEmpty()) {
            plan.dye()
                    .shade()
                    .map(Placed::value)
                    .ifPresent(
                            shade ->
                                    hers.add(
                                            RecipeLine.hers(
                                                    Substance.DYE, percent(shade), CHOICE)));
        }
        add(hers, Substance.SALT, amounts.salt());
        add(hers, Substance.SODA, amounts.soda());
        add(hers, Substance.ACID, amounts.acid());
        add(hers, Substance.FIXATIVE, amounts.fixative());
        return hers;
    }

    private static void add(List<RecipeLine> hers, Substance what, Optional<Rate> rate) {
        rate.ifPresent(r -> hers.add(RecipeLine.hers(what, r, LEAFLET)));
    }

    private static Rate percent(Share shade) {
        return Rate.percent(shade.percent(4).replace(" %", ""));
    }
}
