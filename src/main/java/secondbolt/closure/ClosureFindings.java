package secondbolt.closure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;

/** What a maker should know of a closure before she cuts its holes. */
final class ClosureFindings {
    /**
     * Source: dressmakers' association standards: at least half the diameter and a quarter inch.
     */
    private static final Length BEYOND_THE_BUTTON = Length.ofInches(1, 4);

    /** Cloth left between two upright holes, for their bars; common practice, no source. */
    private static final Length BETWEEN_HOLES = Length.ofMillimetres(10);

    private final ClosureResult result;
    private final Tape tape;
    private final List<Finding> findings = new ArrayList<>();

    private ClosureFindings(ClosureResult result, Tape tape) {
        this.result = result;
        this.tape = tape;
    }

    static List<Finding> of(ClosureResult result, Tape tape) {
        ClosureFindings all = new ClosureFindings(result, tape);
        all.extension();
        all.ends();
        all.closeHoles();
        all.trial();
        all.smallParts();
        return List.copyOf(all.findings);
    }

    private void tell(Level level, String text, String remedy) {
        findings.add(new Finding(result.name(), level, text, remedy));
    }

    private void extension() {
        Optional<Length> across = result.closure().button().across();
        if (across.isEmpty()) {
            tell(
                    Level.NOTE,
                    "The button's diameter is not told, so whether the extension carries it is not"
                            + " checked.",
                    "Write `across` beside `girth`.");
            return;
        }
        Length half = across.get().dividedBy(2);
        Length wanted = half.plus(BEYOND_THE_BUTTON);
        Length has = result.closure().extension();
        if (has.isShorterThan(half)) {
            tell(
                    Level.WARNING,
                    "The button reaches past the finished edge: half of it is "
                            + tape.printSmall(half)
                            + ", the extension only "
                            + tape.printSmall(has)
                            + ".",
                    widen(wanted, has));
        } else if (has.isShorterThan(wanted)) {
            tell(
                    Level.CAUTION,
                    "The extension of "
                            + tape.printSmall(has)
                            + " is narrow for this button: half its diameter and "
                            + tape.printSmall(BEYOND_THE_BUTTON)
                            + " make "
                            + tape.printSmall(wanted)
                            + ".",
                    widen(wanted, has));
        }
    }

    private String widen(Length wanted, Length has) {
        return "Widen the extension by "
                + tape.printSmall(wanted.minus(has))
                + " on both fronts, and the facing with it, or take a smaller button.";
    }

    private void ends() {
        boolean upright = result.closure().holes() == Closure.Holes.UPRIGHT;
        ClosureResult.ButtonMark first = result.marks().get(0);
        ClosureResult.ButtonMark last = result.marks().get(result.marks().size() - 1);
        if (upright && first.start().isNegative()) {
            tell(
                    Level.WARNING,
                    "The first hole would begin above the top edge.",
                    "Set `first` to " + tape.printSmall(first.start().size()) + " more, or lower.");
        }
        if (upright && last.end().isLongerThan(result.length())) {
            tell(
                    Level.WARNING,
                    "The last hole would run past the bottom edge by "
                            + tape.printSmall(last.end().minus(result.length()))
                            + ".",
                    "Raise the last button: a larger `last`.");
        }
        Length outer = first.start().size();
        if (!upright && result.closure().extension().isShorterThan(outer.times(2))) {
            tell(
                    Level.WARNING,
                    "The level holes begin "
                            + tape.printSmall(outer)
                            + " past the centre line; that leaves "
                            + tape.printSmall(result.closure().extension().minus(outer))
                            + " of cloth to the finished edge.",
                    "Widen the extension; a quarter of an inch (6 mm) from hole to edge is usual.");
        }
    }

    private void closeHoles() {
        boolean upright = result.closure().holes() == Closure.Holes.UPRIGHT;
        Optional<Length> between = result.gap().map(gap -> gap.minus(result.hole()));
        if (upright && between.filter(b -> b.isShorterThan(BETWEEN_HOLES)).isPresent()) {
            tell(
                    Level.CAUTION,
                    "Only "
                            + tape.printSmall(between.get())
                            + " of cloth is left between one hole and the next.",
                    "Take fewer buttons, or work the holes level.");
        }
    }

    private void trial() {
        tell(
                Level.NOTE,
                "The hole of "
                        + tape.printSmallBoth(result.hole().roundedUpTo(tape.mark()))
                        + " is what the button needs to pass, between the bars"
                        + (result.closure().ease().isPresent() ? ", with your working ease." : "."),
                "Work a trial hole on a scrap with the same layers and interfacing, open it, and"
                        + " button it before you mark the garment."
                        + (result.closure().button().shape() == Button.Shape.FLAT
                                ? ""
                                : " Wrap a strip of paper round the button: half of it is the hole."));
    }

    private void smallParts() {
        tell(
                Level.NOTE,
                "Buttons come off and can be swallowed.",
                "For a child under three, or one who mouths things, choose another closing; what is"
                        + " allowed on children's clothes your local rules say.");
    }
}
