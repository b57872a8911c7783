package secondbolt.dye.recipe;

import secondbolt.dye.plan.Heat;

/** The ceiling of tender fibres, as a recipe tells it. */
final class Tenders {
    /** Source of both ceilings. */
    static final String NOTES = "dyer's notes on acid dye, 2019";

    private Tenders() {}

    static BathHeat ceiling(Heat most, Tender tender) {
        return BathHeat.of(
                most,
                "at most, never boiled, for the " + (tender.hasSilk() ? "silk" : "wool"),
                NOTES);
    }
}
