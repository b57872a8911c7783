package secondbolt.bleach.recipe;

import secondbolt.bleach.plan.Agent;
import secondbolt.textile.fibre.FibreKind;

/** What each fibre bears of each agent, as its label would have it used. */
public final class FibreBearing {
    private FibreBearing() {}

    /** What a fibre bears. */
    public static Bearing of(Agent agent, FibreKind fibre) {
        return switch (agent) {
            case CHLORINE -> chlorine(fibre);
            case OXYGEN -> oxygen(fibre);
            case PEROXIDE -> peroxide(fibre);
            case REMOVER -> remover(fibre);
        };
    }

    private static Bearing chlorine(FibreKind fibre) {
        return switch (fibre.family()) {
            case PLANT -> chlorineOnPlant(fibre);
            case REGENERATED ->
                    Bearing.withCare(
                            fibre, "is weak while it is wet: short and weak", Sources.MEMORY);
            case HAIR ->
                    Bearing.ruined(
                            fibre,
                            "yellows, goes harsh and dissolves",
                            Sources.SUPPLIER + "; " + Sources.HOUSEHOLD + "; how from memory");
            case SILK ->
                    Bearing.ruined(
                            fibre,
                            "yellows and is eaten away",
                            Sources.SUPPLIER + "; " + Sources.LAUNDRY + "; how from memory");
            case POLYAMIDE -> Bearing.ruined(fibre, "yellows and weakens", Sources.MEMORY);
            case ACETATE -> Bearing.ruined(fibre, "is harmed", Sources.LAUNDRY);
            case ELASTANE ->
                    Bearing.ruined(
                            fibre,
                            "yellows and loses its spring",
                            Sources.SUPPLIER + "; " + Sources.LAUNDRY + "; how from memory");
            case POLYESTER ->
                    Bearing.bears(fibre, "is not harmed, and hardly whitened", Sources.MEMORY);
            case ACRYLIC, POLYPROPYLENE ->
                    Bearing.withCare(fibre, "only cold, and as its label allows", Sources.MEMORY);
            case OTHER -> Bearing.notKnown(fibre);
        };
    }

    private static Bearing chlorineOnPlant(FibreKind fibre) {
        return switch (fibre) {
            case COTTON -> Bearing.bears(fibre, "bears it weak and cool", Sources.STUDY);
            case LINEN ->
                    Bearing.withCare(
                            fibre, "is weakened more than cotton by bleaching", Sources.WATSON);
            default -> Bearing.withCare(fibre, "is taken to be as tender as linen", Sources.MEMORY);
        };
    }

    private static Bearing oxygen(FibreKind fibre) {
        return switch (fibre.family()) {
            case PLANT, POLYESTER, POLYPROPYLENE ->
                    Bearing.bears(fibre, "bears it by its label", Sources.MEMORY);
            case REGENERATED, ACRYLIC, ELASTANE, POLYAMIDE ->
                    Bearing.withCare(fibre, "only lukewarm, and by its label", Sources.MEMORY);
            case HAIR, SILK ->
                    Bearing.ruined(
                            fibre,
                            "is harmed by alkali, which such powders hold",
                            Sources.WATSON + "; that the powders are alkaline from memory");
            case ACETATE ->
                    Bearing.withCare(
                            fibre,
                            "only cold and by its label: hot alkali harms it",
                            Sources.COLOURISTS);
            case OTHER -> Bearing.notKnown(fibre);
        };
    }

    private static Bearing peroxide(FibreKind fibre) {
        return switch (fibre.family()) {
            case HAIR, SILK -> Bearing.bears(fibre, "is whitened best by peroxide", Sources.WATSON);
            case PLANT -> Bearing.bears(fibre, "bears it by its label", Sources.MEMORY);
            case REGENERATED, POLYAMIDE, POLYESTER, ACETATE, ACRYLIC, ELASTANE, POLYPROPYLENE ->
                    Bearing.withCare(fibre, "by its label, on a scrap first", Sources.MEMORY);
            case OTHER -> Bearing.notKnown(fibre);
        };
    }

    private static Bearing remover(FibreKind fibre) {
        return switch (fibre.family()) {
            case PLANT, REGENERATED -> Bearing.bears(fibre, "bears it hot", Sources.REMOVER_SHEET);
            case SILK -> Bearing.withCare(fibre, "not above 85 °C", Sources.REMOVER_SHEET);
            case HAIR ->
                    Bearing.withCare(
                            fibre,
                            "not above 90 °C, for less long and with half the soda ash, and not"
                                    + " moved: it felts",
                            Sources.REMOVER_SHEET + "; felting from memory");
            case POLYESTER ->
                    Bearing.withCare(
                            fibre,
                            "hardly changes where it is dyed itself, and creases for good when hot",
                            Sources.MEMORY);
            case POLYAMIDE, ACRYLIC ->
                    Bearing.withCare(
                            fibre, "only as the remover's leaflet says for it", Sources.MEMORY);
            case ACETATE -> Bearing.ruined(fibre, "is harmed by hot alkali", Sources.COLOURISTS);
            case ELASTANE, POLYPROPYLENE ->
                    Bearing.ruined(fibre, "is harmed by the heat it needs", Sources.MEMORY);
            case OTHER -> Bearing.notKnown(fibre);
        };
    }
}
