package secondbolt.sewing.advice;

import java.util.List;
import java.util.stream.Stream;

/**
 * A row of the two needle charts, with the cloth weights that it stands for.
 *
 * <p>Sources: of the sizes, a machine manual's table of cloth, thread and needle, and needle charts
 * of quilters; of the weights of lawn, voile, shirting, linen, denim and canvas, a mill's table of
 * cloth weights. Weights overlap where cloths do.
 */
public enum NeedleRow {
    /** Lawn, voile, sheer. */
    SHEER("lawn, voile, sheer", "70 to 80", "70 or 80", 0, 120, false),
    /** Shirting, linen, medium wool. */
    MIDDLE("shirting, linen, medium wool", "75 to 90", "90", 110, 250, false),
    /** Denim, tweed, canvas, coating. */
    HEAVY("denim, tweed, canvas, coating", "80 to 90", "100 to 110", 200, 5000, false),
    /** Light knits. */
    LIGHT_KNIT("light knit", "", "ball point 70 to 80", 0, 150, true),
    /** Heavier knits. */
    HEAVY_KNIT("heavier knit", "", "ball point 90", 150, 5000, true);

    private final String cloth;
    private final String manual;
    private final String chart;
    private final double leastG;
    private final double mostG;
    private final boolean isKnit;

    NeedleRow(
            String cloth,
            String manual,
            String chart,
            double leastG,
            double mostG,
            boolean isKnit) {
        this.cloth = cloth;
        this.manual = manual;
        this.chart = chart;
        this.leastG = leastG;
        this.mostG = mostG;
        this.isKnit = isKnit;
    }

    /** What it is for. */
    public String cloth() {
        return cloth;
    }

    /** The metric sizes of a machine manual; empty if it gives none. */
    public String manual() {
        return manual;
    }

    /** Those of needle charts. */
    public String chart() {
        return chart;
    }

    /** The rows for a cloth, the finest first; all of its kind if its weight is not known. */
    public static List<NeedleRow> of(SewnCloth cloth) {
        return Stream.of(values())
                .filter(row -> row.isKnit == cloth.isKnit())
                .filter(row -> cloth.weight().isEmpty() || row.holds(cloth))
                .toList();
    }

    private boolean holds(SewnCloth cloth) {
        return cloth.weight()
                .filter(w -> w.gramsPerSquareMetre() >= leastG && w.gramsPerSquareMetre() <= mostG)
                .isPresent();
    }
}
