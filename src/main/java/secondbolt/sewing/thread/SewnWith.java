package secondbolt.sewing.thread;

import java.util.Optional;
import secondbolt.sewing.plan.Finish;
import secondbolt.sewing.plan.SeamChoice;
import secondbolt.sewing.plan.SewingMeans;
import secondbolt.sewing.plan.SewingPlan;
import secondbolt.sewing.plan.Stitch;

/**
 * The stitches that are taken: told, or what is usual with her machine on her cloth.
 *
 * @param plan what she tells
 * @param isKnit whether the main cloth stretches
 */
public record SewnWith(SewingPlan plan, boolean isKnit) {
    /**
     * Rows of a stitch beside a seam.
     *
     * @param stitch which
     * @param rows as many times the seam's length
     */
    public record Rows(Stitch stitch, int rows) {}

    /** What joins a seam. */
    public Stitch stitch(SeamChoice choice) {
        return choice.stitch().orElseGet(this::usualStitch);
    }

    /** What joins the seams in general. */
    public Stitch usualOrTold() {
        return stitch(plan.seams());
    }

    /** What is taken where no stitch is told; common practice, no source. */
    public Stitch usualStitch() {
        if (means().isByHand()) {
            return Stitch.BACKSTITCH;
        }
        boolean zigzags = isKnit && means().has(Stitch.ZIGZAG);
        boolean overlocks = isKnit && !zigzags && means().overlock().isPresent();
        return zigzags
                ? Stitch.ZIGZAG
                : overlocks ? means().overlock().orElseThrow() : Stitch.LOCKSTITCH;
    }

    /** What becomes of its edges; nothing is done where the stitch lies over them itself. */
    public Finish finish(SeamChoice choice) {
        return stitch(choice).isOverlock()
                ? Finish.RAW
                : choice.finish().orElseGet(this::usualFinish);
    }

    /** What is taken where no finish is told; common practice, no source. */
    public Finish usualFinish() {
        if (means().has(Stitch.ZIGZAG)) {
            return Finish.ZIGZAG;
        }
        return means().overlock().isPresent() ? Finish.OVERLOCK : Finish.OVERCAST;
    }

    /** A plain line: a second row, a facing sewn down, stay-stitching. */
    public Stitch plain() {
        return means().isByHand()
                ? Stitch.RUNNING
                : means().has(Stitch.LOCKSTITCH) ? Stitch.LOCKSTITCH : usualStitch();
    }

    /**
     * What a finish adds to the seam itself, on both its edges; nothing where no thread is used. A
     * bound edge is sewn to its strip and stitched beside it again.
     */
    public Optional<Rows> rows(Finish finish) {
        int rows = plan.rowsOfFinish();
        return switch (finish) {
            case RAW, PINKED -> Optional.empty();
            case STITCHED_AND_PINKED -> Optional.of(new Rows(plain(), rows));
            case TURNED -> Optional.of(new Rows(plain(), 2));
            case ZIGZAG -> Optional.of(new Rows(Stitch.ZIGZAG, rows));
            case OVERLOCK ->
                    Optional.of(new Rows(means().overlock().orElse(Stitch.OVERLOCK_THREE), rows));
            case OVERCAST -> Optional.of(new Rows(Stitch.OVERCAST, rows));
            case CAUGHT -> Optional.of(new Rows(Stitch.CATCH, 2));
            case BOUND -> Optional.of(new Rows(plain(), 2 * rows));
            case FRENCH, FELLED -> Optional.of(new Rows(plain(), 1));
        };
    }

    /** What neatens the one raw edge of a hem turned once. */
    public Optional<Rows> rowsOfOneEdge(Finish finish) {
        return rows(finish)
                .filter(any -> !finish.isPartOfTheSeam() && finish != Finish.CAUGHT)
                .map(both -> new Rows(both.stitch(), finish == Finish.BOUND ? 2 : 1));
    }

    private SewingMeans means() {
        return plan.means();
    }
}
