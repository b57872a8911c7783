package secondbolt.draw.paper;

import secondbolt.draw.Decimals;
import secondbolt.measure.Length;

/**
 * What a printer makes of the test square of 100 mm, measured on paper, so that sheets can be drawn
 * larger or smaller by as much and come out true.
 *
 * @param across what the square measured across the paper as the printer takes it in, upright
 * @param along what it measured along
 */
public record PrintCorrection(Length across, Length along) {
    private static final Length TRUE = Length.ofMillimetres(100);

    /** For a printer that prints true. */
    public static final PrintCorrection NONE = new PrintCorrection(TRUE, TRUE);

    private static final Length LEAST = Length.ofMillimetres(80);
    private static final Length MOST = Length.ofMillimetres(125);

    /**
     * Checks the measures.
     *
     * @throws IllegalArgumentException if one is not above zero
     */
    public PrintCorrection {
        if (!across.isPositive() || !along.isPositive()) {
            throw new IllegalArgumentException("measured " + across + " by " + along);
        }
    }

    /** Whether both lie from 80 to 125 mm; beyond that the measuring went wrong. */
    public boolean isSane() {
        return isSane(across) && isSane(along);
    }

    private static boolean isSane(Length measured) {
        return !measured.isShorterThan(LEAST) && !measured.isLongerThan(MOST);
    }

    /** Whether the printer is off at all. */
    public boolean isNeeded() {
        return !equals(NONE);
    }

    /** By how much everything is drawn larger across the upright paper. */
    public double factorAcross() {
        return TRUE.millimetres() / across.millimetres();
    }

    /** By how much everything is drawn larger along the upright paper. */
    public double factorAlong() {
        return TRUE.millimetres() / along.millimetres();
    }

    /** What a corrected sheet says of itself. */
    public String words() {
        return "Corrected for a printer that prints 100 mm as "
                + Decimals.text(across.millimetres())
                + " mm across and "
                + Decimals.text(along.millimetres())
                + " mm along.";
    }
}
