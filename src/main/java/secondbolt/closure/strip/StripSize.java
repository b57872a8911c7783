package secondbolt.closure.strip;

import secondbolt.closure.row.ClosureResult;
import secondbolt.closure.row.FastenerMark;

/**
 * How large the strips of a closure are, and what stands where across them; all in millimetres.
 *
 * @param lengthMm of the placket
 * @param extensionMm from the finished edge to the centre line
 * @param rowOutMm from the centre line out to the row that works, of the side above
 * @param besideMm from the finished edge to the letters beside the marks
 * @param widthMm from the finished edge to the inner one
 */
record StripSize(
        double lengthMm, double extensionMm, double rowOutMm, double besideMm, double widthMm) {
    /** Half the length of a bar. */
    static final double BAR_MM = 2;

    /** Room beside the hole for number and distance. */
    private static final double LETTERS_MM = 31;

    static StripSize of(ClosureResult result) {
        double extensionMm = result.closure().extension().millimetres();
        double rowOutMm = result.closure().overlap().rowOut().millimetres();
        double besideMm = extensionMm + besideCentreMm(result, rowOutMm) + 2;
        return new StripSize(
                result.length().millimetres(),
                extensionMm,
                rowOutMm,
                besideMm,
                besideMm - 2 + LETTERS_MM);
    }

    /** How far marks reach inward from the centre line. */
    private static double besideCentreMm(ClosureResult result, double rowOutMm) {
        double inward = buttonRadiusMm(result) + rowOutMm;
        if (!result.closure().fastening().hasHoles()) {
            return inward;
        }
        for (FastenerMark mark : result.marks()) {
            double hole = mark.isUpright() ? BAR_MM : mark.end().millimetres() - rowOutMm + BAR_MM;
            inward = Math.max(inward, hole);
        }
        return inward;
    }

    /** Half the width of a fastener, or of a dot where that is not told. */
    static double buttonRadiusMm(ClosureResult result) {
        return result.closure().fastening().width().map(a -> a.millimetres() / 2).orElse(0.5);
    }
}
