package secondbolt.supply.list;

import secondbolt.supply.plan.Quantity;

/**
 * How much of a thing is wanted, and by whom; nobody's amount is added to another's, for they speak
 * of the same things.
 *
 * @param workedOut by the topics, added up
 * @param byDesign as the design's notions say, added up
 * @param own as the maker wrote under {@code supplies}
 */
public record Wanted(Quantity workedOut, Quantity byDesign, Quantity own) {
    /** Nothing of it. */
    static Wanted none(Quantity.Kind kind) {
        Quantity none = Quantity.none(kind);
        return new Wanted(none, none, none);
    }

    Wanted alsoWorkedOut(Quantity more) {
        return new Wanted(workedOut.plus(more), byDesign, own);
    }

    Wanted alsoByDesign(Quantity more) {
        return new Wanted(workedOut, byDesign.plus(more), own);
    }

    Wanted withOwn(Quantity told) {
        return new Wanted(workedOut, byDesign, told);
    }

    /** The most that any of them wants. */
    public Quantity most() {
        return workedOut.orMore(byDesign).orMore(own);
    }
}
