package secondbolt.dye.recipe;

import secondbolt.dye.plan.Rate;

/**
 * One published figure for one thing that goes in, or hers.
 *
 * @param what goes in
 * @param least how much at least
 * @param most how much at most, reckoned on the same; the same where one figure is named
 * @param source where it comes from
 * @param isHers whether it is her own, from her leaflet or her choice
 */
public record RecipeLine(Substance what, Rate least, Rate most, String source, boolean isHers) {
    /** Checks that both are reckoned alike. */
    public RecipeLine {
        if (least.of() != most.of() || least.number().compareTo(most.number()) > 0) {
            throw new IllegalArgumentException(least + " to " + most);
        }
    }

    static RecipeLine of(Substance what, Rate rate, String source) {
        return new RecipeLine(what, rate, rate, source, false);
    }

    static RecipeLine percent(Substance what, String least, String most, String source) {
        return new RecipeLine(what, Rate.percent(least), Rate.percent(most), source, false);
    }

    static RecipeLine hers(Substance what, Rate rate, String source) {
        return new RecipeLine(what, rate, rate, source, true);
    }

    /** {@code 2 to 3 % of the fibre}. */
    public String rate() {
        return least.equals(most) ? most.words() : least.figure() + " to " + most.words();
    }

    /** Whether there is none of it. */
    public boolean isNothing() {
        return most.isNothing();
    }
}
