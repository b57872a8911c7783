package secondbolt.trim.fused;

import java.util.Comparator;
import java.util.Optional;
import secondbolt.textile.fibre.Fibre;
import secondbolt.textile.fibre.FibreKind;

/**
 * How hot a sole plate may be.
 *
 * <p>Source of the ceilings: ISO 3758:2012; which fibre bears which: from memory, on the cautious
 * side of two consumer charts.
 */
public enum IronHeat {
    /** Not at all. */
    NONE(0, "no iron at all"),
    /** One dot; no steam. */
    ONE_DOT(110, "one dot, 110 °C at most, no steam and no damp cloth"),
    /** Two dots. */
    TWO_DOTS(150, "two dots, 150 °C at most"),
    /** Three dots. */
    THREE_DOTS(200, "three dots, 200 °C at most");

    private final int celsius;
    private final String words;

    IronHeat(int celsius, String words) {
        this.celsius = celsius;
        this.words = words;
    }

    /** The ceiling in degrees Celsius; 0 for no iron. */
    public int celsius() {
        return celsius;
    }

    /** As a page says it. */
    public String words() {
        return words;
    }

    /** The most that a cloth bears: what its most tender fibre does; nothing if one is unknown. */
    public static Optional<IronHeat> of(Fibre fibre) {
        return fibre.hasAny(kind -> kind.family() == FibreKind.Family.OTHER)
                ? Optional.empty()
                : fibre.shares().keySet().stream()
                        .map(IronHeat::of)
                        .min(Comparator.comparingInt(IronHeat::celsius));
    }

    private static IronHeat of(FibreKind kind) {
        return switch (kind.family()) {
            case PLANT -> THREE_DOTS;
            case REGENERATED, HAIR, SILK, POLYESTER -> TWO_DOTS;
            case POLYAMIDE, ACETATE, ACRYLIC, ELASTANE -> ONE_DOT;
            case POLYPROPYLENE, OTHER -> NONE;
        };
    }
}
