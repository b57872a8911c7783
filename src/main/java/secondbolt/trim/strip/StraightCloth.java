package secondbolt.trim.strip;

import java.util.Collections;
import secondbolt.measure.Length;
import secondbolt.shape.Box;

/**
 * A rectangle of cloth, of which strips are cut along its long side. What is left keeps its place.
 *
 * @param box the cloth
 */
public record StraightCloth(Box box) {
    /** More strips are no binding. */
    private static final int MOST_STRIPS = 500;

    /**
     * Strips and what is left.
     *
     * @param cut the strips
     * @param rest of the cloth
     */
    public record Taken(StripCut cut, Box rest) {}

    /**
     * Cuts as many strips as reach once they are joined, or as there are. Ends are joined on the
     * slant, two strips laid square to each other, which takes one width of each join (derived).
     */
    public Taken take(StripWish wish) {
        double longMm = Math.max(box.widthMm(), box.heightMm());
        double shortMm = Math.min(box.widthMm(), box.heightMm());
        double widthMm = wish.width().millimetres();
        boolean isLongEnough = longMm >= wish.shortest().millimetres() && longMm > widthMm;
        int room = isLongEnough ? (int) Math.min(MOST_STRIPS, shortMm / widthMm) : 0;
        double moreMm = wish.need().millimetres() - longMm;
        int wanted = 1 + (int) Math.ceil(Math.max(0, moreMm) / Math.max(longMm - widthMm, 1));
        int count = Math.min(room, wanted);
        StripCut cut =
                new StripCut(
                        wish,
                        Collections.nCopies(count, Length.ofComputedMillimetres(longMm)),
                        count,
                        wish.width());
        return new Taken(cut, without(count * widthMm));
    }

    private Box without(double takenMm) {
        boolean isWide = box.widthMm() >= box.heightMm();
        return isWide
                ? new Box(
                        box.leftMm(),
                        box.topMm() + takenMm,
                        box.widthMm(),
                        Math.max(0, box.heightMm() - takenMm))
                : new Box(
                        box.leftMm() + takenMm,
                        box.topMm(),
                        Math.max(0, box.widthMm() - takenMm),
                        box.heightMm());
    }
}
