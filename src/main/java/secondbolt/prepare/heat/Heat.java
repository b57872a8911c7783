package secondbolt.prepare.heat;

import java.util.Comparator;
import java.util.Optional;
import secondbolt.measure.Share;
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
 * @param isByHand whether its label has it washed by hand
 * @param isLabelHotter whether its label allows the iron or the wash far more than its fibre bears
 *     as a rule
 */
public record Heat(
        Optional<IronHeat> iron,
        String ironBy,
        Optional<Temperature> wash,
        String washBy,
        boolean isByHand,
        boolean isLabelHotter) {
    /** Less of a fibre than this leaves a label as it is (our own choice, no source). */
    private static final Share TRACE = Share.ofPercent(10);

    private static final Temperature HOT = new Temperature(60);
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
                label.wash().filter(CareLabel.Wash::byHand).isPresent(),
                fibre.filter(f -> isHotter(f, ironed, washed)).isPresent());
    }

    private static boolean isHotter(
            Fibre fibre, Optional<IronHeat> ironed, Optional<Temperature> washed) {
        return ironed.filter(heat -> isHotter(fibre, heat)).isPresent()
                || washed.filter(heat -> isHotter(fibre, heat)).isPresent();
    }

    /** Two dots more than a good part of it bears; a trace of elastane hinders no label. */
    private static boolean isHotter(Fibre fibre, IronHeat label) {
        return fibre.shareOf(kind -> label.dots() - heat(kind).iron().dots() > 1).compareTo(TRACE)
                > 0;
    }

    /** Hot for what is washed at the lowest; cottons of all kinds have labels for hot water. */
    private static boolean isHotter(Fibre fibre, Temperature label) {
        return label.compareTo(HOT) >= 0
                && fibre.hasAny(kind -> heat(kind).wash().equals(FibreHeat.LEAST.wash()));
    }

    /**
     * How hot it may be ironed, in words.
     *
     * <p>Source: one dot without steam, a workwear maker's care page on ISO 3758.
     */
    public String ironWords() {
        return iron.map(i -> i.words() + (i == IronHeat.LOW ? ", no steam" : ""))
                .orElse("not ironed");
    }

    /** How hot it may be washed, in words. */
    public String washWords() {
        return wash.map(Temperature::words).orElse("not washed") + (isByHand ? ", by hand" : "");
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
