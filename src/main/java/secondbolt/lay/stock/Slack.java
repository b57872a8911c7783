package secondbolt.lay.stock;

import java.util.Comparator;
import java.util.List;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.shape.Box;

/**
 * How much narrower and shorter a cloth could be for the same lay, its pieces slid together each
 * way and no piece past another.
 *
 * <p>Derived: from the left, each piece can lie no nearer than beside those it would meet; the
 * farthest any reaches is what the lay takes. Two pieces that reach into each other's boxes may
 * come nearer to each other or not: the least is as if they kept their distance, the most as if
 * they were not in each other's way.
 *
 * @param across of the width
 * @param along of the length
 */
public record Slack(Room across, Room along) {
    /**
     * How much room there is one way.
     *
     * @param leastMm what there is for certain, zero or more
     * @param mostMm what there may be, no less; both are the same where all pieces are boxes
     */
    public record Room(double leastMm, double mostMm) {}

    private static final double SAME_MM = 1e-4;

    /**
     * Of a cloth that pieces lie on.
     *
     * @param gapMm between two pieces
     */
    public static Slack of(SpreadCloth spread, List<LaidPiece> laid, double gapMm) {
        Box sound = spread.soundForHidden().box();
        List<double[]> across = laid.stream().map(l -> sides(l.box(), true)).toList();
        List<double[]> along = laid.stream().map(l -> sides(l.box(), false)).toList();
        return new Slack(
                room(sound.widthMm(), across, gapMm), room(sound.heightMm(), along, gapMm));
    }

    private static Room room(double thereMm, List<double[]> boxes, double gapMm) {
        double least = Math.max(0, thereMm - takes(boxes, gapMm, true));
        return new Room(least, Math.max(least, thereMm - takes(boxes, gapMm, false)));
    }

    /** From and to along the axis, then from and to along the other one. */
    private static double[] sides(Box box, boolean isAcross) {
        return isAcross
                ? new double[] {box.leftMm(), box.rightMm(), box.topMm(), box.bottomMm()}
                : new double[] {box.topMm(), box.bottomMm(), box.leftMm(), box.rightMm()};
    }

    private static double takes(List<double[]> boxes, double gapMm, boolean isKept) {
        List<double[]> inOrder =
                boxes.stream().sorted(Comparator.comparingDouble((double[] b) -> b[0])).toList();
        double[] least = new double[inOrder.size()];
        double takes = 0;
        for (int i = 0; i < least.length; i++) {
            double[] own = inOrder.get(i);
            for (int j = 0; j < i; j++) {
                double[] other = inOrder.get(j);
                boolean meets =
                        own[2] < other[3] + gapMm - SAME_MM && other[2] < own[3] + gapMm - SAME_MM;
                boolean isBeyond = own[0] >= other[1] + gapMm - SAME_MM;
                double apart = isBeyond ? other[1] - other[0] + gapMm : own[0] - other[0];
                boolean counts = meets && (isBeyond || isKept);
                least[i] = counts ? Math.max(least[i], least[j] + apart) : least[i];
            }
            takes = Math.max(takes, least[i] + own[1] - own[0]);
        }
        return takes;
    }
}
