package secondbolt.textile.state;

import java.util.Optional;

/**
 * What a cloth's own care label says.
 *
 * @param wash how hot it may be washed, if told
 * @param iron how hot it may be ironed, if told
 */
public record CareLabel(Optional<Wash> wash, Optional<Iron> iron) {
    /** A label of which nothing is told. */
    public static final CareLabel UNTOLD = new CareLabel(Optional.empty(), Optional.empty());

    /**
     * The wash tub.
     *
     * @param celsius the figure in the tub, 30 to 95; 40 for a hand in the tub; 0 for a crossed one
     * @param byHand whether a hand is in it
     */
    public record Wash(int celsius, boolean byHand) {
        /** A crossed tub. */
        public static final Wash NOT = new Wash(0, false);

        /**
         * A hand in the tub, which allows 40 °C at most.
         *
         * <p>Source: ISO 3758:2012, from memory.
         */
        public static final Wash BY_HAND = new Wash(40, true);

        /** Whether it may be washed at all. */
        public boolean isAllowed() {
            return celsius > 0;
        }
    }

    /**
     * The iron.
     *
     * @param dots 1 to 3; 0 for a crossed one
     */
    public record Iron(int dots) {
        /** A crossed iron. */
        public static final Iron NOT = new Iron(0);
    }
}
