package secondbolt.lay.pin;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import secondbolt.lay.piece.LaidPiece;
import secondbolt.lay.placement.WrittenPlace;
import secondbolt.lay.stock.SpreadCloth;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * A laid piece as lines of the plan.
 *
 * @param laid where it lies
 * @param spread on which cloth
 * @param names of all pieces there are
 * @param units the tape of the plan's bare numbers
 * @param tape the maker's, for the remark beside them
 */
record PlanEntry(LaidPiece laid, SpreadCloth spread, Set<String> names, Tape units, Tape tape) {
    /** What YAML reads as it stands. */
    private static final Pattern PLAIN =
            Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{N} _().'-]*[\\p{L}\\p{N}).'])?");

    /** The remark beside a place. */
    private static final Pattern ON_TAPE =
            Pattern.compile(
                    "# -?[\\p{N} ./\u2044\u2009]+ ?(cm|in), -?[\\p{N} ./\u2044\u2009]+ ?(cm|in)");

    /** Its lines, each without its end, its dash and what it is indented by. */
    List<String> lines() {
        return List.of(
                "piece: " + text(name()),
                "cloth: " + text(spread.name()),
                "at: " + at(laid.box().leftMm(), laid.box().topMm()),
                "lies: " + laid.lies().words(),
                "cut: no");
    }

    /** As the cutting plan names it; the piece alone where another one is called that. */
    String name() {
        String words = laid.piece().words();
        boolean isOther = names.contains(words) && !words.equals(laid.piece().piece().name());
        return isOther ? laid.piece().piece().name() : words;
    }

    private String at(double acrossMm, double alongMm) {
        String exact =
                units == Tape.CENTIMETRE
                        ? "[" + decimal(acrossMm, 1) + ", " + decimal(alongMm, 1) + "]"
                        : "[" + decimal(acrossMm, 0) + " mm, " + decimal(alongMm, 0) + " mm]";
        return exact + "  # " + print(acrossMm) + ", " + print(alongMm);
    }

    private String print(double mm) {
        return tape.print(Length.ofComputedMillimetres(mm));
    }

    /** A kept edge may lie a hair beyond that of the cloth. */
    private static String decimal(double mm, int shifted) {
        BigDecimal written = WrittenPlace.written(Math.max(0, mm)).movePointLeft(shifted);
        return written.signum() == 0 ? "0" : written.toPlainString();
    }

    /** Whether a remark is one of ours, of where a piece lay. */
    static boolean isOfPlace(String remark) {
        return ON_TAPE.matcher(remark).matches();
    }

    /** A name as YAML takes it. */
    static String text(String name) {
        return PLAIN.matcher(name).matches()
                ? name
                : "\"" + name.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
