package secondbolt.closure.placket;

import secondbolt.measure.Length;

/**
 * A place on a placket, after the alterations.
 *
 * @param at from the top
 * @param why what is there
 * @param clearAbove what stays free above it
 * @param clearBelow what stays free below it
 */
public record PlacketSpot(Length at, String why, Length clearAbove, Length clearBelow) {
    /** A place with as much free on both sides. */
    public PlacketSpot(Length at, String why, Length clear) {
        this(at, why, clear, clear);
    }

    /** What stays free on the side where it is more. */
    public Length clear() {
        return clearAbove.orLonger(clearBelow);
    }
}
