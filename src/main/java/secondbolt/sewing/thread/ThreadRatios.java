package secondbolt.sewing.thread;

import java.util.List;
import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.sewing.plan.SewingMeans;
import secondbolt.sewing.plan.Stitch;

/**
 * The ratio of each stitch: her own if she measured one, that of the published table for a machine,
 * of geometry for the hand.
 *
 * @param means what she sews with
 */
public record ThreadRatios(SewingMeans means) {
    /** Where the table of the machine stitches comes from. */
    public static final String TABLE =
            "a clothing-technology handbook and a thread maker, as copied: thread factors";

    private static final String GEOMETRY = "derived from the geometry of the stitch";
    private static final String FACTORY = "thread use of a woven shirt, 2015";
    private static final Length USUAL_HAND = Length.ofMillimetres(3);
    private static final Length USUAL_MACHINE = Length.ofMillimetres(5).dividedBy(2);
    private static final Length USUAL_OVERCAST = Length.ofMillimetres(4);
    private static final Length USUAL_THICKNESS = Length.ofMillimetres(1);

    /** A fifth of an inch; the width that the published example takes. */
    private static final Length OVERLOCK_WIDTH = Length.ofInches(1, 5);

    /** What is taken of a stitch. */
    public ThreadRatio of(Stitch stitch) {
        return Optional.ofNullable(means.ratios().get(stitch))
                .map(own -> new ThreadRatio(own, "your own trial"))
                .orElseGet(() -> published(stitch));
    }

    /** What sources give for a stitch, whatever she measured. */
    public ThreadRatio published(Stitch stitch) {
        return switch (stitch) {
            case LOCKSTITCH -> table("2.5");
            case ZIGZAG -> table("7");
            case CHAINSTITCH -> table("5.5");
            case OVERLOCK_TWO -> table("12");
            case OVERLOCK_THREE -> table("14");
            case OVERLOCK_FOUR ->
                    new ThreadRatio(Share.ofRatio(18, 1), "about 17 to 18, from memory");
            case COVERSTITCH -> table("18");
            case RUNNING -> new ThreadRatio(StitchGeometry.running(hand(), thickness()), GEOMETRY);
            case BACKSTITCH ->
                    new ThreadRatio(StitchGeometry.backstitch(hand(), thickness()), GEOMETRY);
            case OVERCAST ->
                    new ThreadRatio(
                            StitchGeometry.overcast(USUAL_OVERCAST, USUAL_OVERCAST, thickness()),
                            GEOMETRY);
            case CATCH ->
                    new ThreadRatio(Share.ofRatio(3, 1), "about 3, common practice, no source");
        };
    }

    private static ThreadRatio table(String ratio) {
        return new ThreadRatio(Share.ofDecimal(ratio), TABLE);
    }

    /** What other sources give for the same stitch; the two are never averaged. */
    public List<ThreadRatio> rivals(Stitch stitch) {
        return switch (stitch) {
            case LOCKSTITCH ->
                    List.of(
                            new ThreadRatio(
                                    StitchGeometry.lockstitch(machine(), thickness()),
                                    "geometry, 2 + 2TS, for your stitch and thickness: article"
                                            + " with geometric formulae"));
            case CHAINSTITCH ->
                    List.of(
                            new ThreadRatio(
                                    StitchGeometry.chainstitch(machine(), thickness()),
                                    "geometry, 4 + 2TS, for your stitch and thickness: article"
                                            + " with geometric formulae"));
            case OVERLOCK_THREE ->
                    List.of(
                            new ThreadRatio(Share.ofRatio(9, 1), FACTORY),
                            new ThreadRatio(
                                    StitchGeometry.overlock(machine(), OVERLOCK_WIDTH, thickness()),
                                    "geometry, 3 + 4WS + 4TS, a fifth of an inch wide: article"
                                            + " with geometric formulae; published forms differ"));
            default -> List.of();
        };
    }

    /** How long a hand stitch is, told or usual. */
    public Length hand() {
        return means.stitchLength().orElse(USUAL_HAND);
    }

    /** How long a machine stitch is, told or usual. */
    public Length machine() {
        return means.stitchLength().orElse(USUAL_MACHINE);
    }

    /** How thick a seam is, told or taken. */
    public Length thickness() {
        return means.thickness().orElse(USUAL_THICKNESS);
    }
}
