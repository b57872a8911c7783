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

    /** How near each end of the placket, and the finished edge, the holes come. */
    private void ends() {
        boolean upright = result.closure().holes() == Closure.Holes.UPRIGHT;
        ClosureResult.ButtonMark first = result.marks().get(0);
        ClosureResult.ButtonMark last = result.marks().get(result.marks().size() - 1);
        boolean isOne = result.marks().size() == 1;
        near(
                isOne ? "The hole" : "The first hole",
                "top edge",
                upright ? first.start() : first.fromTop(),
                "Set the button lower: a `first` larger by ");
        near(
                isOne ? "The hole" : "The last hole",
                "bottom edge",
                result.length().minus(upright ? last.end() : last.fromTop()),
                isOne
                        ? "Set the button higher: a `first` smaller by "
                        : "Set the last button higher: a `last` larger by ");
        if (!upright) {
            near(
                    "Each level hole",
                    "finished edge",
                    result.closure().extension().minus(first.start().size()),
                    "Widen the extension on both fronts, and the facing with it: an extension larger by ");
        }
    }

    /** A hole that ends less than the usual distance inside an edge. */
    private void near(String hole, String edge, Length left, String remedy) {
        Length wanted = usualToEdge();
        if (!left.isShorterThan(wanted)) {
            return;
        }
        boolean isCut = !left.isLongerThan(Length.ZERO);
        String text =
                !isCut
                        ? hole + " leaves only " + tape.printSmall(left) + " of cloth to the "
                        : left.isNegative()
                                ? hole + " would run " + tape.printSmall(left.size()) + " past the "
                                : hole + " would cut into the ";
        tell(
                isCut ? Level.WARNING : Level.CAUTION,
                text + edge + ".",
                remedy
                        + tape.printSmall(wanted.minus(left).roundedUpTo(tape.mark()))
                        + " leaves the usual "
                        + tape.printSmall(wanted)
                        + ".");
    }

    /**
     * A quarter of an inch from the end of a hole to the edge. Source: Textiles and Clothing, K. H.
     * Watson, American School of Home Economics, 1907.
     */
    private Length usualToEdge() {
        return tape == Tape.INCH ? Length.ofInches(1, 4) : Length.ofMillimetres(6);
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
