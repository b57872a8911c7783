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

/** Direct dye: salt and heat, and a fixative afterwards. */
final class DirectRecipe {
    private static final String LABORATORY = "laboratory exercise, cotton with direct dyes, 2020";
    private static final String NOTE = "laboratory note on direct dye, 2024";
    private static final String NOTE_ON_HEAT = "laboratory note on direct dye";

    private DirectRecipe() {}

    static Recipe of(Optional<Depth> depth, Tender tender) {
        List<RecipeLine> lines = new ArrayList<>();
        depth.ifPresent(
                d -> {
                    lines.addAll(dye(d));
                    lines.addAll(salt(d));
                    if (!tender.isProtein()) {
                        lines.addAll(soda());
                    }
                    lines.add(
                            RecipeLine.of(
                                    Substance.FIXATIVE,
                                    Rate.of(Rate.Of.MILLILITRES_IN_LITRE, "30"),
                                    DyeSources.DIRECT_SHEET + ", its own liquid"));
                });
        return new Recipe(DyeClass.DIRECT, lines, heats(depth, tender), times());
    }

    private static List<RecipeLine> dye(Depth depth) {
        String sheet = DyeSources.HOME_SHEET + ", half an ounce to 2 lb";
        return switch (depth) {
            case PALE ->
                    List.of(
                            RecipeLine.percent(
                                    Substance.DYE,
                                    "0.1",
                                    "0.25",
                                    DyeSources.COTTON_1901 + ", pinks"));
            case MEDIUM ->
                    List.of(
                            RecipeLine.percent(Substance.DYE, "1.5625", "1.5625", sheet),
                            RecipeLine.percent(
                                    Substance.DYE,
                                    "1",
                                    "4",
                                    DyeSources.COTTON_1901 + ", reds; " + NOTE));
            case DARK ->
                    List.of(
                            RecipeLine.percent(
                                    Substance.DYE, "2.5", "2.5", DyeSources.DIRECT_SHEET),
                            RecipeLine.percent(
                                    Substance.DYE, "3", "4", DyeSources.COTTON_1901 + ", navy"));
            case BLACK ->
                    List.of(
                            RecipeLine.percent(
                                    Substance.DYE, "5", "6", DyeSources.COTTON_1901 + ", black"));
        };
    }

    private static List<RecipeLine> salt(Depth depth) {
        String percent =
                switch (depth) {
                    case PALE -> "5";
                    case MEDIUM -> "10";
                    case DARK, BLACK -> "20";
                };
        return List.of(
                RecipeLine.percent(Substance.SALT, percent, percent, LABORATORY + "; " + NOTE),
                RecipeLine.percent(
                        Substance.SALT, "25", "25", DyeSources.HOME_SHEET + ", 4 oz to 1 lb"));
    }

    private static List<RecipeLine> soda() {
        return List.of(
                RecipeLine.percent(Substance.SODA, "0", "0", DyeSources.HOME_SHEET),
                RecipeLine.percent(Substance.SODA, "0.5", "1", LABORATORY),
                RecipeLine.percent(Substance.SODA, "1", "3", NOTE));
    }

    private static List<BathHeat> heats(Optional<Depth> depth, Tender tender) {
        List<BathHeat> heats = new ArrayList<>();
        heats.add(BathHeat.of(Heat.ofCelsius(40), "when the cloth goes in", LABORATORY));
        if (depth.equals(Optional.of(Depth.PALE)) && !tender.hasSilk()) {
            heats.add(
                    new BathHeat(
                            Heat.ofCelsius(77),
                            Heat.ofCelsius(82),
                            "at most, for a pale shade",
                            DyeSources.COTTON_1901));
        }
        tender.ceiling()
                .ifPresentOrElse(
                        most -> heats.add(Tenders.ceiling(most, tender)),
                        () ->
                                heats.add(
                                        new BathHeat(
                                                Heat.ofCelsius(80),
                                                Heat.ofCelsius(100),
                                                "slowly up to, a gentle simmer",
                                                NOTE_ON_HEAT)));
        return heats;
    }

    private static List<BathTime> times() {
        return List.of(
                new BathTime("before the salt", new Lasting(15, 20), LABORATORY),
                new BathTime("at heat, stirring", Lasting.minutes(20), DyeSources.HOME_SHEET),
                new BathTime("at heat", new Lasting(45, 60), LABORATORY),
                new BathTime("cooling in the bath", new Lasting(15, 20), LABORATORY));
    }
}
