package secondbolt.fit.alter;

import java.util.List;
import secondbolt.shape.Point;

/**
 * How far each point of a piece moves along the grain when it is slashed and spread, or folded, at
 * its lines.
 *
 * <p>Lengthening cuts the paper at the line and spreads it by the whole amount; shortening folds it
 * there, half the amount to either side, so that the line comes to lie in the middle of both.
 * Source: Central Washington University costume text, chapter 17: fold depth is half the amount,
 * the gap the whole of it. Derived: the folded strip lies evenly about the line.
 *
 * @param cuts the lines, from the top down
 */
public record LengthenField(List<Cut> cuts) {
    /** Coordinates are rounded to a millionth; points on the line itself stay above it. */
    private static final double ON_THE_LINE_MM = 1e-6;

    /**
     * A line that is cut.
     *
     * @param name the line's name
     * @param yMm where it lies
     * @param byMm by how much it spreads; negative folds
     */
    public record Cut(String name, double yMm, double byMm) {
        double foldTopMm() {
            return yMm - foldedMm() / 2;
        }

        double foldBottomMm() {
            return yMm + foldedMm() / 2;
        }

        private double foldedMm() {
            return Math.max(0, -byMm);
        }

        /** Whether a point would disappear in the fold. */
        boolean swallows(double atMm) {
            return atMm > foldTopMm() + ON_THE_LINE_MM && atMm < foldBottomMm() - ON_THE_LINE_MM;
        }
    }

    /** Copies the cuts. */
    public LengthenField {
        cuts = List.copyOf(cuts);
    }

    boolean isNothing() {
        return cuts.stream().allMatch(cut -> cut.byMm() == 0);
    }

    Point move(Point point) {
        return point.moved(0, shiftMm(point.yMm()));
    }

    double shiftMm(double yMm) {
        double shift = 0;
        for (Cut cut : cuts) {
            shift +=
                    yMm > cut.foldBottomMm() - (cut.byMm() < 0 ? ON_THE_LINE_MM : -ON_THE_LINE_MM)
                            ? cut.byMm()
                            : 0;
        }
        return shift;
    }

    /** Where a line itself comes to lie: in the middle of the gap, or on the fold. */
    double lineAfterMm(double yMm) {
        double shift = 0;
        for (Cut cut : cuts) {
            shift += cut.yMm() < yMm ? cut.byMm() : cut.yMm() == yMm ? cut.byMm() / 2 : 0;
        }
        return yMm + shift;
    }
}
