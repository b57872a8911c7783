package secondbolt.dye.recipe;

import java.util.List;
import secondbolt.dye.plan.DyeClass;
import secondbolt.dye.plan.Heat;
import secondbolt.dye.plan.Lasting;

/** A household blend: by packets, hot. */
final class BlendRecipe {
    /** Source: dyer's reference site, two answers on household dye. */
    private static final String ANSWERS = "a dyer's reference site, answers on household dye";

    private BlendRecipe() {}

    static Recipe of(Tender tender) {
        Heat best = Heat.ofFahrenheit(190);
        BathHeat heat =
                tender.ceiling()
                        .filter(best::isAbove)
                        .map(most -> Tenders.ceiling(most, tender))
                        .orElse(BathHeat.of(best, "best at", ANSWERS));
        return new Recipe(
                DyeClass.BLEND,
                List.of(),
                List.of(heat),
                List.of(new BathTime("at heat, or longer", Lasting.minutes(30), ANSWERS)));
    }
}
