package secondbolt.hem.plan;

import java.util.List;
import java.util.Map;
import secondbolt.measure.Length;
import secondbolt.worksheet.Convention;

/**
 * What a hem is the hem of, with the depths that are usual for it.
 *
 * <p>Source, but where another is named: American Sewing Guild, How Deep Is That Hem, 2025.
 */
public enum Garment {
    /** A skirt; how deep depends on its shape. */
    SKIRT("skirt"),
    /** A dress. */
    DRESS("dress"),
    /** A shirt. */
    SHIRT("shirt"),
    /** A blouse. */
    BLOUSE("blouse"),
    /** A coat or jacket. */
    COAT("coat"),
    /** Trousers. */
    TROUSERS("trousers"),
    /** A sleeve, for which no table was found. */
    SLEEVE("sleeve"),
    /** A curtain. Source: a question-and-answer page on curtain hems. */
    CURTAIN("curtain"),
    /** Something else, of which nothing is known. */
    OTHER("other");

    private static final String GUILD = "American Sewing Guild, 2025";

    /**
     * What a metric tape takes for so many eighths of an inch, in millimetres; common practice, no
     * source.
     */
    private static final Map<Long, Integer> METRIC_MM =
            Map.ofEntries(
                    Map.entry(2L, 6),
                    Map.entry(3L, 10),
                    Map.entry(4L, 13),
                    Map.entry(5L, 16),
                    Map.entry(6L, 20),
                    Map.entry(10L, 32),
                    Map.entry(12L, 40),
                    Map.entry(16L, 50),
                    Map.entry(24L, 75),
                    Map.entry(32L, 100));

    private final String word;

    Garment(String word) {
        this.word = word;
    }

    /**
     * A usual depth.
     *
     * @param of which kind of the garment; empty for all
     * @param least the least
     * @param most the most; the same where only one is named
     */
    public record Usual(String of, Convention least, Convention most) {
        private static Usual inches(String of, long least, long most, long under) {
            return new Usual(of, eighths(least * 8 / under), eighths(most * 8 / under));
        }

        private static Convention eighths(long count) {
            return new Convention(
                    Length.ofInches(count, 8), Length.ofMillimetres(METRIC_MM.get(count)), GUILD);
        }
    }

    /** As written. */
    public String word() {
        return word;
    }

    /** The depths that are usual for it. */
    public List<Usual> usual() {
        return switch (this) {
            case SKIRT ->
                    List.of(
                            Usual.inches("straight or A-line", 2, 3, 1),
                            Usual.inches("full or flared", 2, 3, 8));
            case DRESS, COAT -> List.of(Usual.inches("", 3, 4, 2));
            case SHIRT -> List.of(Usual.inches("", 3, 5, 8));
            case BLOUSE ->
                    List.of(Usual.inches("worn out", 3, 6, 8), Usual.inches("tucked in", 1, 2, 4));
            case TROUSERS ->
                    List.of(Usual.inches("women's", 5, 10, 8), Usual.inches("men's", 2, 2, 1));
            case CURTAIN ->
                    List.of(
                            Usual.inches("", 3, 3, 1),
                            Usual.inches("long", 4, 4, 1),
                            Usual.inches("short", 2, 2, 1));
            case SLEEVE, OTHER -> List.of();
        };
    }

    /** Where these depths come from. */
    public String source() {
        return this == CURTAIN ? "a question-and-answer page on curtain hems" : GUILD;
    }
}
