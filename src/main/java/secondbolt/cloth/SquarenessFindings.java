package secondbolt.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.textile.extent.Squareness;
import secondbolt.worksheet.Convention;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Subject;

/**
 * What the maker should know of a cloth that is not square.
 *
 * @param about the cloth
 * @param tape to print with
 */
record SquarenessFindings(Subject about, Tape tape) {
    /** A lean or a difference that a tape over a whole cloth shows. */
    private static final Convention SQUARE_ENOUGH =
            Convention.common(Length.ofMillimetres(3), Length.ofMillimetres(3));

    private static final String REMEDY =
            "Pull it square while it is damp, along its short diagonal, and dry it flat; cut"
                    + " ragged ends off along a thread, then measure again.";

    List<Finding> of(Squareness square) {
        List<Finding> findings = new ArrayList<>();
        if (shows(square.slant())) {
            findings.add(
                    caution(
                            "cloth-sides-differ",
                            "Its sides differ: left "
                                    + tape.printBoth(square.left())
                                    + ", right "
                                    + tape.printBoth(square.right())
                                    + ". It is taken with a bottom edge that slants by "
                                    + tape.printBoth(square.slant())
                                    + "."));
        }
        Optional<Length> lean = square.lean().filter(l -> shows(l.size()));
        lean.ifPresent(
                l ->
                        findings.add(
                                caution(
                                        "cloth-out-of-square",
                                        "It is out of square: by its diagonal the bottom right"
                                                + " corner lies "
                                                + tape.printBoth(l.size())
                                                + (l.isNegative() ? " left" : " right")
                                                + " of where a square corner would be. Places are"
                                                + " taken along the threads, as if it were pulled"
                                                + " square.")));
        return findings;
    }

    private boolean shows(Length difference) {
        return difference.isLongerThan(SQUARE_ENOUGH.on(tape));
    }

    private Finding caution(String code, String text) {
        return new Finding(code, about, Finding.Level.CAUTION, text, REMEDY);
    }
}
