package secondbolt.closure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.fastening.Overlap;
import secondbolt.closure.row.ClosureResult;
import secondbolt.file.value.Placed;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.pattern.EdgeSum;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Sentence;
import secondbolt.worksheet.Subject;

/** Whether the extension of a closure carries its fasteners, and is there at all. */
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
        result.closure()
                .placket()
                .edges()
                .map(Placed::value)
                .filter(edges -> result.closure().extension().isPositive())
                .ifPresent(this::drawn);
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

    /** Whether there is cloth for the extension on the piece the closure lies on. */
    private void drawn(EdgeSum edges) {
        Optional<Overlap.DrawnTo> to = result.closure().overlap().drawnTo();
        String wide = tape.printSmallBoth(result.closure().extension());
        String many = fastening.kind().word();
        if (to.isEmpty()) {
            tell(
                    "extension-not-told-drawn",
                    Level.CAUTION,
                    "Taken for granted: "
                            + edges.words()
                            + " is drawn to its finished edge, "
                            + wide
                            + " past the line of the "
                            + many
                            + ". Drawn only to that line it has no cloth under them.",
                    "If it is drawn to its finished edge, write `drawn to: finished edge` with the"
                            + " closure; if a band is sewn on that has the extension, `drawn to:"
                            + " band`; if it is drawn only to that line, `drawn to: centre line`,"
                            + " and draw it out before you cut.");
        } else if (to.get() == Overlap.DrawnTo.CENTRE_LINE) {
            findings.add(
                    new Finding(
                            "extension-not-on-the-piece",
                            new Subject.Edges(edges.words(), Set.copyOf(edges.pieceEdges())),
                            Level.STOP,
                            Sentence.capital(edges.words())
                                    + " is drawn to the line of the "
                                    + many
                                    + " only: past it there is no cloth for the extension of "
                                    + wide
                                    + " of "
                                    + result.name()
                                    + ", on either side.",
                            "Draw the edge "
                                    + tape.printSmall(result.closure().extension())
                                    + " farther out, its facing with it, and write that it is drawn to its"
                                    + " finished edge; or sew on a band that has it, and write that"
                                    + " it is drawn to the band."));
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
