package secondbolt.cloth.yields;

import java.util.List;
import java.util.stream.Stream;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Convention;

/**
 * A common width of cloth from the bolt.
 *
 * <p>Source: the commonest widths in inches are 36, 45, 54 and 60 (list of bolt widths, 36 to 108
 * in); their metric neighbours 90, 115, 140 and 150 cm are from memory.
 *
 * @param width the width
 * @param tape the system it belongs to
 */
public record BoltWidth(Length width, Tape tape) {
    /** How much of a bolt the selvages take, both together. */
    public static final Convention SELVAGES =
            new Convention(
                    Length.ofInches(2, 1),
                    Length.ofMillimetres(50),
                    "a trade convention: 5 cm off 150 cm, 2 in off 60 in");

    private static final List<Long> CENTIMETRES = List.of(90L, 115L, 140L, 150L);
    private static final List<Long> INCHES = List.of(36L, 45L, 54L, 60L);

    /** The common widths of both systems, the metric ones first, the narrow ones first. */
    public static final List<BoltWidth> COMMON =
            Stream.concat(
                            CENTIMETRES.stream()
                                    .map(cm -> of(Length.ofMillimetres(10 * cm), Tape.CENTIMETRE)),
                            INCHES.stream().map(in -> of(Length.ofInches(in, 1), Tape.INCH)))
                    .toList();

    /** What of the width is between the selvages. */
    public Length cuttable() {
        return width.minus(SELVAGES.on(tape));
    }

    private static BoltWidth of(Length width, Tape tape) {
        return new BoltWidth(width, tape);
    }
}
