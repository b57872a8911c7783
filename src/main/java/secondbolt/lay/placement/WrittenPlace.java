package secondbolt.lay.placement;

import java.math.BigDecimal;
import java.math.RoundingMode;
import secondbolt.shape.Box;
import secondbolt.shape.Outline;
import secondbolt.shape.Point;

/**
 * Where the box round a laid piece begins, as a plan writes it: in hundred-thousandths of a
 * millimetre, so that a piece lies exactly where it lay when it is read back, and no sheet changes
 * by being pinned.
 */
public final class WrittenPlace {
    private static final int DECIMALS = 5;

    private WrittenPlace() {}

    /** A number of millimetres as it is written. */
    public static BigDecimal written(double mm) {
        BigDecimal exact = BigDecimal.valueOf(mm).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return exact.signum() == 0 ? BigDecimal.ZERO : exact.stripTrailingZeros();
    }

    /**
     * A placement moved by next to nothing, so that its box begins where a plan can write it.
     *
     * @param outline of the piece as it is drawn
     */
    public static Placement rounded(Placement placement, Outline outline) {
        Box box = placement.orientation().applyTo(outline).box();
        double acrossMm = written(box.leftMm() + placement.acrossMm()).doubleValue();
        double alongMm = written(box.topMm() + placement.alongMm()).doubleValue();
        return begun(placement, box, new Point(acrossMm, alongMm));
    }

    /** With its box, as it is turned, beginning at a point. */
    static Placement begun(Placement placement, Box turned, Point at) {
        return new Placement(
                placement.item(),
                placement.container(),
                placement.orientation(),
                at.xMm() - turned.leftMm(),
                at.yMm() - turned.topMm());
    }
}
