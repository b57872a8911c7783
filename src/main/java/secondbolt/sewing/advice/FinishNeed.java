package secondbolt.sewing.advice;

import secondbolt.measure.Length;
import secondbolt.sewing.plan.Finish;
import secondbolt.worksheet.Convention;

/**
 * What a finish is for, and what it takes.
 *
 * @param allowance how wide the allowance of each edge must be for it
 * @param cloth what it is for
 * @param takes what it takes of the allowance
 */
public record FinishNeed(Convention allowance, String cloth, String takes) {
    private static final String OKLAHOMA =
            "Oklahoma State University Extension, 4-H Fabrics and Fashions card 810";
    private static final String NOTES = "fashion student notes on seam finishes, 2017";
    private static final String HOUSEHOLD = "household book text on seam finishes";
    private static final String ENCYCLOPAEDIA = "encyclopaedia, bound and French seams";
    private static final String WATSON = "Watson, Textiles and Clothing, 1907";
    private static final String DERIVED = "derived: ";

    /** What is known of a finish. */
    public static FinishNeed of(Finish finish) {
        return switch (finish) {
            case RAW ->
                    new FinishNeed(
                            Convention.common(Length.ZERO, Length.ZERO),
                            "knits and felt that do not fray; edges that lie inside",
                            "nothing");
            case PINKED ->
                    new FinishNeed(
                            narrow(),
                            "firm, hardly frays (" + NOTES + ")",
                            "the tips of the edge; it does not by itself stop fraying");
            case STITCHED_AND_PINKED ->
                    new FinishNeed(
                            new Convention(
                                    Length.ofInches(3, 8),
                                    Length.ofMillimetres(10),
                                    DERIVED + "its line stands 6 mm (1/4 in) from the edge"),
                            "frays a little (" + NOTES + ")",
                            "a line 6 mm (1/4 in) from the edge");
            case TURNED ->
                    new FinishNeed(
                            new Convention(
                                    Length.ofInches(1, 2),
                                    Length.ofMillimetres(12),
                                    DERIVED + "the turn, and as much that lies flat"),
                            "light, and frays (" + OKLAHOMA + "; " + NOTES + ")",
                            "6 mm (1/4 in) of each edge, 3 mm (1/8 in) if it hardly frays");
            case ZIGZAG ->
                    new FinishNeed(
                            narrow(),
                            "any but sheer (common practice, no source)",
                            "nothing; 3 or 4 threads of the cloth lie in the stitch");
            case OVERLOCK ->
                    new FinishNeed(
                            narrow(),
                            "bulky cloth, a doubtful fit, seams that must lie open and flat ("
                                    + OKLAHOMA
                                    + ")",
                            "3 to 6 mm that the knife trims away (common practice, no source)");
            case OVERCAST ->
                    new FinishNeed(
                            narrow(), "any, by hand (common practice, no source)", "nothing");
            case CAUGHT ->
                    new FinishNeed(
                            Convention.common(Length.ofInches(3, 8), Length.ofMillimetres(10)),
                            "wool; it is never folded twice (" + WATSON + ")",
                            "nothing; the edges lie open on the cloth");
            case BOUND ->
                    new FinishNeed(
                            Convention.common(Length.ofInches(3, 8), Length.ofMillimetres(10)),
                            "heavy, unlined, frays badly (" + ENCYCLOPAEDIA + ")",
                            "nothing; a bias strip as wide as the allowance and 6 mm (1/4 in)"
                                    + " more, sewn 3 mm (1/8 in) from the edge");
            case FRENCH ->
                    new FinishNeed(
                            wide(OKLAHOMA + ": 3/8 in and 1/4 in"),
                            "sheer or light, straight seams only; not next to the skin, for its"
                                    + " ridge ("
                                    + OKLAHOMA
                                    + "; "
                                    + WATSON
                                    + ")",
                            "10 mm (3/8 in) wrong sides together, trimmed, then 6 mm (1/4 in); or"
                                    + " half the allowance first, trimmed to 5 mm ("
                                    + HOUSEHOLD
                                    + ")");
            case FELLED ->
                    new FinishNeed(
                            wide(DERIVED + "under edge, fold and stitching"),
                            "shirts, work clothes (" + HOUSEHOLD + ")",
                            "the under edge trimmed to half, the upper turned in 3 mm (1/8 in)");
        };
    }

    private static Convention narrow() {
        return Convention.common(Length.ofInches(1, 4), Length.ofMillimetres(6));
    }

    private static Convention wide(String source) {
        return new Convention(Length.ofInches(5, 8), Length.ofMillimetres(15), source);
    }
}
