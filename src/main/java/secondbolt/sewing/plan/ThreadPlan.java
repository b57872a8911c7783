package secondbolt.sewing.plan;

import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.worksheet.Convention;

/**
 * The thread, as far as it is told.
 *
 * @param fibre what it is made of
 * @param colour of the seams
 * @param liningColour of the lining's seams
 * @param spool how much is on a spool
 * @param cone how much is on a cone or spool of an overlock machine
 * @param waste what is added for ends, trials and unpicking
 */
public record ThreadPlan(
        Optional<ThreadFibre> fibre,
        Optional<String> colour,
        Optional<String> liningColour,
        Optional<Length> spool,
        Optional<Length> cone,
        Optional<Share> waste) {
    /** Nothing told. */
    public static final ThreadPlan NOTHING =
            new ThreadPlan(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());

    /** What is added where nothing is told; sources ask for 5 % to 20 %. */
    public static final Share USUAL_WASTE = Share.ofPercent(20);

    /** The small spool of either trade; the yards as seen in use in sewers' notes. */
    public static final Convention USUAL_SPOOL =
            new Convention(
                    Length.ofInches(3600, 1),
                    Length.ofMillimetres(100_000),
                    "sewers' notes naming spools of 100 yd; 100 m from memory");

    /** The large spool of either trade. */
    public static final Convention USUAL_CONE =
            new Convention(
                    Length.ofInches(36_000, 1), Length.ofMillimetres(1_000_000), "from memory");
}
