package secondbolt.lay.plan;

import java.util.Optional;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;

/**
 * What stiffens the pieces that are cut of interfacing.
 *
 * @param width it is sold in, if told
 * @param isNonwoven whether it has no grain, so that pieces may lie any way
 * @param kind how it is held, if told
 * @param isStiff whether it is so stiff that it is cut without seam allowance
 * @param weight by area, if told
 * @param isPreShrunk whether it has been shrunk, if told
 * @param leaflet what its own leaflet says
 */
public record Interfacing(
        Optional<Length> width,
        boolean isNonwoven,
        Optional<Kind> kind,
        boolean isStiff,
        Optional<ClothWeight> weight,
        Optional<Boolean> isPreShrunk,
        Leaflet leaflet) {
    /** One of which nothing is told. */
    public static final Interfacing NOT_TOLD =
            new Interfacing(
                    Optional.empty(),
                    false,
                    Optional.empty(),
                    false,
                    Optional.empty(),
                    Optional.empty(),
                    Leaflet.NOT_TOLD);

    /** How it is held to the cloth. */
    public enum Kind {
        /** Glue on it melts under the iron. */
        FUSIBLE("fusible"),
        /** It is stitched in with the seams. */
        SEWN_IN("sewn-in");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /**
     * What the leaflet that came with it says; it comes before every rule of the trade.
     *
     * @param seconds how long each place is pressed, from 1 to 60, if told
     * @param dampCloth whether a damp cloth lies between, if told
     * @param preShrink whether it must be shrunk first, if told
     */
    public record Leaflet(
            Optional<Integer> seconds, Optional<Boolean> dampCloth, Optional<Boolean> preShrink) {
        /** None told of. */
        public static final Leaflet NOT_TOLD =
                new Leaflet(Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Whether it is known to be fusible. */
    public boolean isFusible() {
        return kind.filter(Kind.FUSIBLE::equals).isPresent();
    }
}
