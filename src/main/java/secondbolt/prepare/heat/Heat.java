package secondbolt.prepare.heat;

import java.util.Comparator;
import java.util.Optional;
import secondbolt.textile.fibre.Fibre;
import secondbolt.textile.fibre.FibreKind;
import secondbolt.textile.state.CareLabel;

/**
 * How hot a cloth may get.
 *
 * @param iron the iron at most; nothing if it must not be ironed
 * @param ironBy what decides it, in a word or two, such as {@code polyester}
 * @param wash the wash at most; nothing if it must not be washed
 * @param washBy what decides it, likewise
 * @param isLabelHotter whether its label allows the iron or the wash more than its fibre bears as a
 *     rule
 */
public record Heat(
        Optional<IronHeat> iron,
        String ironBy,
        Optional<Temperature> wash,
        String washBy,
        boolean isLabelHotter) {
    private static final String LABEL = "its label";
    private static final String UNKNOWN = "fibre not known: the lowest";

    /**
     * The heat of a cloth: its label first, then the most tender of its fibres, then, if no fibre
     * is known, the least of all.
     *
     * <p>Source for blends: an iron maker's manual, the setting of the most tender fibre.
     */
    public static Heat of(Optional<Fibre> fibre, CareLabel label) {
        FibreHeat iron = fibre.map(f -> heat(tenderToIron(f))).orElse(FibreHeat.LEAST);
        FibreHeat wash = fibre.map(f -> heat(tenderToWash(f))).orElse(FibreHeat.LEAST);
        Optional<IronHeat> ironed =
                label.iron()
                        .map(told -> Optional.of(told.dots()).filter(d -> d > 0).map(IronHeat::of))
                        .orElse(Optional.of(iron.iron()));
        Optional<Temperature> washed =
                label.wash()
                        .map(
                                told ->
                                        Optional.of(new Temperature(told.celsius()))
                                                .filter(t -> told.isAllowed()))
                        .orElse(Optional.of(wash.wash()));
        return new Heat(
                ironed,
                label.iron().isPresent() ? LABEL : by(fibre.map(Heat::tenderToIron)),
                washed,
                label.wash().isPresent() ? LABEL : by(fibre.map(Heat::tenderToWash)),
                fibre.isPresent() && isHotter(ironed, iron, washed, wash));
    }

    private static boolean isHotter(
            Optional<IronHeat> ironed,
            FibreHeat iron,
            Optional<Temperature> washed,
            FibreHeat wash) {
        return ironed.filter(heat -> heat.compareTo(iron.iron()) > 0).isPresent()
                || washed.filter(heat -> heat.compareTo(wash.wash()) > 0).isPresent();
    }

    private static String by(Optional<FibreKind> tender) {
        return tender.map(FibreKind::word).orElse(UNKNOWN);
    }

    private static FibreHeat heat(FibreKind kind) {
        return FibreHeat.of(kind.family());
    }

    private static FibreKind tenderToIron(Fibre fibre) {
        return tender(fibre, Comparator.comparing(kind -> heat(kind).iron()));
    }

    private static FibreKind tenderToWash(Fibre fibre) {
        return tender(fibre, Comparator.comparing(kind -> heat(kind).wash()));
    }

    /** The first of the most tender, as they are written. */
    private static FibreKind tender(Fibre fibre, Comparator<FibreKind> byHeat) {
        return fibre.shares().keySet().stream()
                .min(byHeat)
                .orElseThrow(() -> new IllegalStateException("a fibre of nothing"));
    }
}
