package secondbolt.bleach.recipe;

import java.util.List;
import java.util.Optional;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.measure.Volume;
import secondbolt.textile.fibre.Fibre;
import secondbolt.textile.fibre.FibreKind;

/**
 * What a bath of thiourea dioxide takes for one cloth.
 *
 * <p>Source: seller's data sheet, thiourea dioxide: for 500 g of dry cloth 8 l of water, 10 g of
 * remover, 20 g of soda ash, of wool 10 g; cellulose up to 100 °C, silk 85 °C, wool 90 °C; 15 to 20
 * minutes, wool 5 to 10; then rinsed, and 5 g of citric acid to a litre.
 *
 * @param cloth its dry mass
 * @param water in all
 * @param remover in all
 * @param soda soda ash in all
 * @param citric citric acid for one last rinse of as much water, in all
 * @param celsius no hotter, by its most tender fibre; nothing where the sheet does not name a fibre
 *     of it
 * @param leastMinutes how long at least, likewise
 * @param mostMinutes how long at most, likewise
 * @param loads into how many equal ones it is parted for the vessel, 1 or more
 */
public record RemoverBath(
        Mass cloth,
        Volume water,
        Mass remover,
        Mass soda,
        Mass citric,
        Optional<Integer> celsius,
        int leastMinutes,
        int mostMinutes,
        int loads) {
    private static final Share LITRES_A_KILOGRAM = Share.ofRatio(16, 1);
    private static final Share REMOVER = Share.ofPercent(2);
    private static final Share SODA = Share.ofPercent(4);
    private static final Share SODA_FOR_WOOL = Share.ofPercent(2);
    private static final Mass CITRIC_TO_A_LITRE = Mass.ofGrams("5");

    /**
     * The bath for a cloth.
     *
     * @param cloth its dry mass
     * @param fibre what it is made of
     * @param vessel what her vessel takes; all in one if not told
     */
    public static RemoverBath of(Mass cloth, Fibre fibre, Optional<Volume> vessel) {
        Volume water = Volume.LITRE.times(cloth.of(Mass.KILOGRAM)).times(LITRES_A_KILOGRAM);
        boolean isWoolly = fibre.hasAny(kind -> kind.family() == FibreKind.Family.HAIR);
        return new RemoverBath(
                cloth,
                water,
                cloth.times(REMOVER),
                cloth.times(isWoolly ? SODA_FOR_WOOL : SODA),
                CITRIC_TO_A_LITRE.times(water.of(Volume.LITRE)),
                celsius(fibre),
                isWoolly ? 5 : 15,
                isWoolly ? 10 : 20,
                vessel.map(v -> Math.max(1, water.of(v).roundedUp())).orElse(1));
    }

    /** The heat that the most tender fibre bears; nothing if one of them is not named. */
    private static Optional<Integer> celsius(Fibre fibre) {
        List<Optional<Integer>> each =
                fibre.shares().keySet().stream().map(RemoverBath::celsius).toList();
        return each.stream().anyMatch(Optional::isEmpty)
                ? Optional.empty()
                : each.stream().flatMap(Optional::stream).min(Integer::compare);
    }

    private static Optional<Integer> celsius(FibreKind fibre) {
        return switch (fibre.family()) {
            case PLANT, REGENERATED -> Optional.of(100);
            case HAIR -> Optional.of(90);
            case SILK -> Optional.of(85);
            case POLYAMIDE, POLYESTER, ACETATE, ACRYLIC, ELASTANE, POLYPROPYLENE, OTHER ->
                    Optional.empty();
        };
    }

    /** A mass of the whole for one load. */
    public Mass aLoad(Mass all) {
        return all.times(Share.ofRatio(1, loads));
    }

    /** The water of one load. */
    public Volume waterOfALoad() {
        return water.times(Share.ofRatio(1, loads));
    }

    /** How much cloth the vessel takes at once, where one load is too much for it. */
    public static Mass most(Volume vessel) {
        Share kilograms = vessel.of(Volume.LITRE).dividedBy(LITRES_A_KILOGRAM);
        return Mass.KILOGRAM.times(kilograms);
    }
}
