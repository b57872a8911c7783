package secondbolt.closure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.fastening.Overlap;
import secondbolt.closure.row.ClosureResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Sentence;

/** Whether the extension of a closure carries its fasteners. */
final class ExtensionFindings {
    /**
     * Source: dressmakers' association standards: at least half the diameter and a quarter inch.
     */
    private static final Length BEYOND_THE_BUTTON = Length.ofInches(1, 4);

    private final ClosureResult result;
    private final Fastening fastening;
    private final Tape tape;
    private final List<Finding> findings = new ArrayList<>();

    ExtensionFindings(ClosureResult result) {
        this.result = result;
        this.fastening = result.closure().fastening();
        this.tape = result.tape();
    }

    List<Finding> findings() {
        extension();
        return List.copyOf(findings);
    }

    private void extension() {
        Optional<Length> across = fastening.width();
        if (across.isEmpty()) {
            tell(
                    "extension-unchecked",
                    Level.NOTE,
                    "The "
                            + fastening.kind().one()
                            + "'s diameter is not told, so whether the extension carries it is not"
                            + " checked.",
                    fastening.hasHoles() ? "Write `across` beside `girth`." : "Write `wide`.");
            return;
        }
        Length half = across.get().dividedBy(2);
        Length wanted = half.plus(BEYOND_THE_BUTTON);
        Overlap overlap = result.closure().overlap();
        Length has = overlap.extension().minus(overlap.rowOut());
        // What there is down to the mark, what is wanted up to it: their difference is what lacks.
        Length seen = has.roundedDownTo(tape.mark());
        if (has.isShorterThan(half)) {
            tell(
                    "extension-too-narrow",
                    Level.WARNING,
                    "The "
                            + fastening.kind().one()
                            + " reaches past the finished edge: half of it is "
                            + tape.printSmall(half.roundedUpTo(tape.mark()))
                            + ", "
                            + room()
                            + (seen.isPositive()
                                    ? " only " + tape.printSmall(seen) + "."
                                    : " nothing."),
                    widen(wanted, seen));
        } else if (has.isShorterThan(wanted)) {
            tell(
                    "extension-narrow",
                    Level.CAUTION,
                    Sentence.capital(room())
                            + " of "
                            + tape.printSmall(seen)
                            + " is narrow for this "
                            + fastening.kind().one()
                            + ": half its diameter and "
                            + tape.printSmall(BEYOND_THE_BUTTON)
                            + " make "
                            + tape.printSmall(wanted.roundedUpTo(tape.mark()))
                            + ".",
                    widen(wanted, seen));
        }
    }

    private String room() {
        return result.closure().overlap().rowsApart().isPresent()
                ? "the cloth outside the outer row"
                : "the extension";
    }

    private String widen(Length wanted, Length has) {
        return "Widen the extension by "
                + tape.printSmall(wanted.roundedUpTo(tape.mark()).minus(has))
                + " on both sides, and facing and interfacing with it, which takes more cloth; or"
                + " take a smaller "
                + fastening.kind().one()
                + ".";
    }

    private void tell(String code, Level level, String text, String remedy) {
        findings.add(ClosureFindings.found(result, code, level, text, remedy));
    }
}
