package secondbolt.trim.gathered;

import java.util.List;
import secondbolt.measure.Length;
import secondbolt.wearer.BodyMeasure;
import secondbolt.worksheet.Convention;

/**
 * A published rule of how much shorter than the body an elastic is. They disagree; none is taken
 * before another, and they are never averaged.
 *
 * @param words for what it is told, to stand behind what it gives; empty if for any
 * @param least how much shorter at least
 * @param most how much shorter at most
 */
public record ElasticLength(String words, Convention least, Convention most) {
    private static final Convention NOTHING = of(0, 1, 0, "from memory");

    private static final List<ElasticLength> WAIST =
            List.of(
                    new ElasticLength(
                            "",
                            of(2, 1, 50, "a page on sewing elastic"),
                            of(2, 1, 50, "a page on sewing elastic")),
                    new ElasticLength(
                            "",
                            of(2, 1, 50, "a page on measuring a waistband's elastic"),
                            of(3, 1, 75, "a page on measuring a waistband's elastic")),
                    new ElasticLength(
                            "snug",
                            of(2, 1, 50, "a page on the length of an elastic band"),
                            of(4, 1, 100, "a page on the length of an elastic band")),
                    new ElasticLength("firm woven", NOTHING, of(1, 1, 25, "from memory")),
                    new ElasticLength(
                            "soft knitted",
                            of(3, 1, 75, "from memory"),
                            of(5, 1, 125, "from memory")));

    private static final List<ElasticLength> WRIST =
            List.of(
                    new ElasticLength(
                            "",
                            of(1, 2, 13, "a page on sewing elastic"),
                            of(1, 2, 13, "a page on sewing elastic")));

    private static Convention of(int inches, int under, int millimetres, String source) {
        return new Convention(
                Length.ofInches(inches, under), Length.ofMillimetres(millimetres), source);
    }

    /** All that are published for a place on the body; none for most. */
    public static List<ElasticLength> on(BodyMeasure measure) {
        return switch (measure) {
            case WAIST -> WAIST;
            case WRIST -> WRIST;
            default -> List.of();
        };
    }

    /** Where it is published. */
    public String source() {
        return most.source();
    }
}
