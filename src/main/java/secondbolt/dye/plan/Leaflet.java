package secondbolt.dye.plan;

import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.measure.Share;

/**
 * What the leaflet in her packet says; it comes before any figure from elsewhere.
 *
 * @param amounts what goes in
 * @param ratio how many times the dry cloth's mass the bath has
 * @param heat how hot the bath is
 * @param time how long the cloth stays in it
 */
public record Leaflet(
        Amounts amounts, Optional<Share> ratio, Optional<Heat> heat, Optional<Lasting> time) {
    /** She tells of none. */
    public static final Leaflet NONE =
            new Leaflet(Amounts.NONE, Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * What goes in.
     *
     * @param dye the dye
     * @param salt the salt
     * @param soda the soda ash
     * @param acid the vinegar or other acid
     * @param fixative what fixes it afterwards
     */
    public record Amounts(
            Optional<Rate> dye,
            Optional<Rate> salt,
            Optional<Rate> soda,
            Optional<Rate> acid,
            Optional<Rate> fixative) {
        /** Nothing is told. */
        public static final Amounts NONE =
                new Amounts(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
    }

    /** Whether she tells of any of it. */
    public boolean isTold() {
        return Stream.of(amounts.dye, amounts.salt, amounts.soda, amounts.acid, amounts.fixative)
                        .anyMatch(Optional::isPresent)
                || ratio.isPresent()
                || heat.isPresent()
                || time.isPresent();
    }
}
