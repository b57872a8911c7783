package secondbolt.fit.size;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.measure.Length;
import secondbolt.wearer.BodyMeasure;
import secondbolt.worksheet.Convention;

/**
 * The wearing ease one source asks for in woven cloth: what the finished garment measures more than
 * a grown body so that it can move and sit.
 *
 * @param measure where
 * @param garment in what
 * @param build for whom
 * @param least the least ease
 * @param most the most that still is wearing ease, if the source says
 * @param source who says so
 */
record UsualEase(
        BodyMeasure measure,
        Garment garment,
        Build build,
        Convention least,
        Optional<Convention> most,
        String source) {
    /** What hangs from where. */
    enum Garment {
        UPPER,
        LOWER,
        ANY
    }

    /** Whose measurements the source means. */
    enum Build {
        WOMEN,
        MEN,
        ANY
    }

    private static final String COSTUME = "Central Washington University costume text, ch. 16";
    private static final String EXTENSION = "New Mexico State University, Guide C-228";
    private static final String TROUSERS = "New Mexico State University, Guide C-209";
    private static final String DRAFTING = "McCunn, How to Make Sewing Patterns";
    private static final String REFERENCE = "encyclopaedia entry on ease";
    private static final String NECKBAND = "The New Dressmaker, 1921";
    private static final String MEMORY = "from memory";

    /** The crotch's ease goes by the hip: below this it is half an inch. */
    private static final Length SLENDER_HIP = Length.ofInches(36, 1);

    /** Above this it is an inch. */
    private static final Length FULL_HIP = Length.ofInches(38, 1);

    /**
     * The sources speak in quarters of an inch; what a metric tape takes for them: common practice,
     * no source.
     */
    private static final Map<Integer, Integer> METRIC_MM =
            Map.of(2, 13, 3, 19, 4, 25, 6, 38, 8, 50, 10, 65, 11, 70, 12, 75, 16, 100);

    private static final List<UsualEase> ALL =
            List.of(
                    women(BodyMeasure.BUST, Garment.UPPER, 6, 8, COSTUME),
                    women(BodyMeasure.BUST, Garment.UPPER, 12, 16, EXTENSION),
                    women(BodyMeasure.BUST, Garment.UPPER, 8, 16, DRAFTING),
                    women(BodyMeasure.BUST, Garment.UPPER, 8, 10, REFERENCE),
                    men(BodyMeasure.CHEST, Garment.UPPER, 6, 12, COSTUME),
                    women(BodyMeasure.WAIST, Garment.UPPER, 3, 4, COSTUME),
                    women(BodyMeasure.WAIST, Garment.UPPER, 8, 8, DRAFTING),
                    women(BodyMeasure.WAIST, Garment.UPPER, 4, 4, REFERENCE),
                    women(BodyMeasure.WAIST, Garment.LOWER, 2, 3, COSTUME),
                    women(BodyMeasure.WAIST, Garment.LOWER, 4, 4, DRAFTING),
                    women(BodyMeasure.WAIST, Garment.LOWER, 4, 4, REFERENCE),
                    men(BodyMeasure.WAIST, Garment.LOWER, 3, 4, COSTUME),
                    women(BodyMeasure.HIP, Garment.ANY, 8, 11, COSTUME),
                    women(BodyMeasure.HIP, Garment.ANY, 8, 8, DRAFTING),
                    women(BodyMeasure.HIP, Garment.ANY, 8, 12, REFERENCE),
                    men(BodyMeasure.HIP, Garment.LOWER, 6, 8, COSTUME),
                    atLeast(BodyMeasure.THIGH, Build.MEN, 4, COSTUME),
                    atLeast(BodyMeasure.KNEE, Build.ANY, 4, TROUSERS),
                    atLeast(BodyMeasure.NECK, Build.MEN, 2, NECKBAND),
                    new UsualEase(
                            BodyMeasure.UPPER_ARM,
                            Garment.UPPER,
                            Build.ANY,
                            quarters(8, MEMORY),
                            Optional.of(quarters(12, MEMORY)),
                            MEMORY));

    private static Convention quarters(int count, String source) {
        return new Convention(
                Length.ofInches(count, 4), Length.ofMillimetres(METRIC_MM.get(count)), source);
    }

    private static UsualEase women(
            BodyMeasure measure, Garment garment, int least, int most, String source) {
        return new UsualEase(
                measure,
                garment,
                Build.WOMEN,
                quarters(least, source),
                Optional.of(quarters(most, source)),
                source);
    }

    private static UsualEase men(
            BodyMeasure measure, Garment garment, int least, int most, String source) {
        return new UsualEase(
                measure,
                garment,
                Build.MEN,
                quarters(least, source),
                Optional.of(quarters(most, source)),
                source);
    }

    private static UsualEase atLeast(BodyMeasure measure, Build build, int least, String source) {
        return new UsualEase(
                measure, Garment.ANY, build, quarters(least, source), Optional.empty(), source);
    }

    /**
     * What the sources ask for at a measurement, the least first; none if none speaks of it.
     *
     * @param garment that the pattern makes
     * @param build that it is for
     * @param hip the wearer's, which decides the ease of the crotch
     */
    static List<UsualEase> of(
            BodyMeasure measure, Garment garment, Build build, Optional<Length> hip) {
        Stream<UsualEase> crotch =
                measure == BodyMeasure.CROTCH_DEPTH
                        ? hip.map(UsualEase::crotch).stream()
                        : Stream.empty();
        return Stream.concat(ALL.stream().filter(row -> row.holds(measure, garment, build)), crotch)
                .sorted((a, b) -> a.least.inch().compareTo(b.least.inch()))
                .toList();
    }

    private boolean holds(BodyMeasure of, Garment made, Build wearer) {
        boolean fitsGarment = garment == Garment.ANY || garment == made;
        boolean fitsBuild = build == Build.ANY || wearer == Build.ANY || build == wearer;
        return measure == of && fitsGarment && fitsBuild;
    }

    private static UsualEase crotch(Length hip) {
        int ease = hip.isShorterThan(SLENDER_HIP) ? 2 : hip.isLongerThan(FULL_HIP) ? 4 : 3;
        return atLeast(BodyMeasure.CROTCH_DEPTH, Build.ANY, ease, TROUSERS);
    }
}
