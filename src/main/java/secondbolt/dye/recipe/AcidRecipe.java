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
 * Acid dye on wool, silk and polyamide, with vinegar. A laboratory's acetic acid is told as
 * household vinegar of 5 %, which is twenty times as much (derived).
 */
final class AcidRecipe {
    private static final String NOTES = "dyer's notes on acid dye, 2019";
    private static final String PACKET = "a maker's packet sheet for acid dye";
    private static final String METHOD = "a dyer's wool method";
    private static final String INDUSTRY = "industry note, polyamide with acid dyes";

    /** A US cup. Source: NIST Handbook 44, Appendix C: a sixteenth of 231 cubic inches. */
    private static final String CUP_ML = "236.5882365";

    private static final String QUARTER_CUP_ML = "59.147059125";

    private AcidRecipe() {}

    static Recipe of(Optional<Depth> depth, Tender tender) {
        List<RecipeLine> lines = new ArrayList<>();
        depth.ifPresent(d -> lines.addAll(dye(d)));
        lines.addAll(vinegar());
        return new Recipe(DyeClass.ACID, lines, heats(tender), times());
    }

    private static List<RecipeLine> dye(Depth depth) {
        String pinks = DyeSources.WOOL_1902 + ", pinks";
        return switch (depth) {
            case PALE -> List.of(RecipeLine.percent(Substance.DYE, "0.1", "0.2", pinks));
            case MEDIUM ->
                    List.of(
                            RecipeLine.percent(Substance.DYE, "1.5", "2", NOTES),
                            RecipeLine.percent(Substance.DYE, "0.1", "1", METHOD));
            case DARK ->
                    List.of(
                            RecipeLine.percent(Substance.DYE, "4", "4", NOTES + ", navy"),
                            RecipeLine.percent(
                                    Substance.DYE, "2", "4", DyeSources.WOOL_1902 + ", scarlets"));
            case BLACK ->
                    List.of(
                            RecipeLine.percent(Substance.DYE, "4", "4", NOTES),
                            RecipeLine.percent(Substance.DYE, "2", "2", DyeSources.ACID_SELLER),
                            RecipeLine.percent(Substance.DYE, "5", "6", DyeSources.WOOL_1902));
        };
    }

    /** Laboratories, 1 to 3 % of acetic acid, side with the cup. */
    private static List<RecipeLine> vinegar() {
        return List.of(
                RecipeLine.of(
                        Substance.VINEGAR,
                        Rate.of(Rate.Of.MILLILITRES_A_POUND, CUP_ML),
                        PACKET + ", a US cup to a pound: 2.6 % acetic acid"),
                RecipeLine.of(
                        Substance.VINEGAR,
                        Rate.of(Rate.Of.MILLILITRES_A_POUND, QUARTER_CUP_ML),
                        NOTES + ", a quarter cup to a pound: 0.65 % acetic acid"),
                RecipeLine.percent(
                        Substance.VINEGAR,
                        "20",
                        "60",
                        INDUSTRY + ", 1 to 3 % acetic acid; " + METHOD + ", 2 %"));
    }

    private static List<BathHeat> heats(Tender tender) {
        List<BathHeat> heats = new ArrayList<>();
        heats.add(
                new BathHeat(
                        Heat.ofCelsius(66),
                        Heat.ofCelsius(71),
                        "when the cloth goes in",
                        DyeSources.WOOL_1902));
        heats.add(
                new BathHeat(
                        Heat.ofCelsius(50), Heat.ofCelsius(60), "the same, polyamide", INDUSTRY));
        tender.ceiling()
                .ifPresentOrElse(
                        most -> heats.add(Tenders.ceiling(most, tender)),
                        () ->
                                heats.add(
                                        BathHeat.of(
                                                Heat.ofCelsius(100),
                                                "slowly up to, polyamide",
                                                INDUSTRY)));
        return tender.isProtein() ? List.of(heats.get(0), heats.get(2)) : heats.subList(1, 3);
    }

    private static List<BathTime> times() {
        return List.of(
                new BathTime("at heat", new Lasting(30, 60), NOTES),
                new BathTime("at heat", new Lasting(30, 40), PACKET));
    }
}
