package secondbolt.closure.fastening;

import java.util.List;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Rule;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Convention;

/** How a button is written. */
final class ButtonSection {
    /** The cheapest way to learn a button's size. */
    static final String MEASURE =
            "Wrap a strip of paper once round the widest part, mark where it meets and measure it:"
                    + " that is the `girth`. Or lay a ruler across and along its rim.";

    /** 18 ligne. */
    private static final Convention SHIRT_BUTTON =
            Convention.common(Length.ofInches(7, 16), Length.ofMillimetres(23).dividedBy(2));

    private static final Convention SHIRT_BUTTON_THICK =
            Convention.common(Length.ofInches(1, 8), Length.ofMillimetres(3));

    private static final Key<Length> ACROSS =
            Key.optional(
                            "across",
                            Forms.length(LengthRange.of("3 mm", "80 mm")),
                            "The button's diameter; button sizes may be in ligne (40 to the inch).",
                            "11.5 mm")
                    .asking(MEASURE);
    private static final Key<Length> THICK =
            Key.optional(
                            "thick",
                            Forms.length(LengthRange.of("0.5 mm", "60 mm")),
                            "Its thickness, or the height of a dome; a flat button needs it.",
                            "2.5 mm")
                    .asking(MEASURE);
    private static final Key<Button.Shape> SHAPE =
            Key.optional(
                    "shape",
                    Forms.choice(Button.Shape.values(), Button.Shape::word),
                    "Its shape; flat if not told.",
                    "flat");
    private static final Key<Length> GIRTH =
            Key.optional(
                    "girth",
                    Forms.length(LengthRange.of("6 mm", "260 mm")),
                    "The tape once round its widest part. It goes before across and thick when the"
                            + " hole is worked out: measured is better than reckoned.",
                    "44 mm");

    private static final Key<Button.Attached> ATTACHED =
            Key.optional(
                    "attached",
                    Forms.choice(Button.Attached.values(), Button.Attached::word),
                    "Sewn through its face, or by a shank of its own, which is not counted in"
                            + " `thick`; sewn through if not told.",
                    "sewn through");

    static final Form<Button> FORM =
            MapForm.of(
                            "a button",
                            List.of(ACROSS, THICK, SHAPE, GIRTH, ATTACHED),
                            ButtonSection::button)
                    .with(
                            Rule.some("across", "girth"),
                            Rule.not(Rule.has("thick"), Rule.is("shape", "ball")),
                            Rule.any(
                                    Rule.some("girth", "thick"),
                                    Rule.is("shape", "domed"),
                                    Rule.is("shape", "ball")));

    private ButtonSection() {}

    /** A shirt button, where nothing is known. */
    static Button usual(Tape tape) {
        return new Button(
                Button.Shape.FLAT,
                Optional.of(SHIRT_BUTTON.on(tape)),
                Optional.of(SHIRT_BUTTON_THICK.on(tape)),
                Optional.empty(),
                Button.Attached.SEWN_THROUGH);
    }

    /** The same as a maker reads it. */
    static String usualWords(Tape tape) {
        return "a flat shirt button, "
                + tape.printSmall(SHIRT_BUTTON.on(tape))
                + " across and "
                + thickness(tape);
    }

    private static String thickness(Tape tape) {
        return tape.printSmall(SHIRT_BUTTON_THICK.on(tape))
                + " thick ("
                + SHIRT_BUTTON.source()
                + ")";
    }

    private static Optional<Length> across(Fields fields) {
        Tape tape = fields.tape();
        Length usual = SHIRT_BUTTON.on(tape);
        return fields.get(GIRTH).isPresent()
                ? fields.get(ACROSS)
                : fields.isOpen(GIRTH) && fields.get(ACROSS).isEmpty() && !fields.isOpen(ACROSS)
                        ? fields.meanwhile(GIRTH, usual, usualWords(tape))
                        : fields.orMeanwhile(
                                ACROSS,
                                usual,
                                tape.printSmall(usual)
                                        + ", a shirt button ("
                                        + SHIRT_BUTTON.source()
                                        + ")");
    }

    /** A dome's height follows from its width, and a ball's too. */
    private static Optional<Length> thick(Fields fields, Button.Shape shape) {
        boolean isNeeded = shape == Button.Shape.FLAT && fields.get(GIRTH).isEmpty();
        return isNeeded
                ? fields.orMeanwhile(
                        THICK, SHIRT_BUTTON_THICK.on(fields.tape()), thickness(fields.tape()))
                : fields.get(THICK);
    }

    private static Optional<Button> button(Fields fields) {
        Button.Shape shape = fields.get(SHAPE).orElse(Button.Shape.FLAT);
        Button button =
                new Button(
                        shape,
                        across(fields),
                        thick(fields, shape),
                        fields.get(GIRTH),
                        fields.get(ATTACHED).orElse(Button.Attached.SEWN_THROUGH));
        return isWhole(button, fields) ? Optional.of(button) : Optional.empty();
    }

    private static boolean isWhole(Button button, Fields fields) {
        if (button.girth().isEmpty() && button.across().isEmpty()) {
            fields.tell(
                    fields.place(),
                    "a button without `across`",
                    "`across` (with `thick` if it is flat), or `girth`");
            return false;
        }
        if (button.shape() == Button.Shape.BALL && button.thick().isPresent()) {
            fields.tell(
                    THICK,
                    "`thick` for a ball",
                    "`across` alone: a ball is as thick as it is wide");
            return false;
        }
        boolean flat = button.shape() == Button.Shape.FLAT;
        if (flat && button.girth().isEmpty() && button.thick().isEmpty()) {
            fields.tell(
                    fields.place(),
                    "a flat button without `thick`",
                    THICK.line(fields.tape()) + " as well: its hole is diameter plus thickness");
            return false;
        }
        return isPossible(button, fields);
    }

    private static boolean isPossible(Button button, Fields fields) {
        if (button.across().isEmpty() || button.girth().isEmpty()) {
            return true;
        }
        Length least = button.across().get().times(2);
        if (button.girth().get().isShorterThan(least)) {
            fields.tell(
                    GIRTH,
                    "a girth of less than twice `across`",
                    "the tape once round the widest part, over face and back");
            return false;
        }
        return true;
    }
}
