package secondbolt.textile.extent;

import java.util.List;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.Answer;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.shape.Point;

/** The keys that say how large a cloth is. */
public final class ExtentKeys {
    private static final LengthRange SIDES = LengthRange.of("5 cm", "20 m");

    /**
     * Sheeting and curtain voile for rooms come 330 cm wide at most, quilt backing 108 to 120 in: a
     * bare number beyond is a slip of the unit (common practice, no source).
     */
    private static final LengthRange WIDEST = LengthRange.of("5 cm", "330 cm");

    private static final Length SMALLEST = Length.ofMillimetres(50);
    private static final int MOST_CORNERS = 200;

    public static final Key<Answer<AcrossAlong<Length>>> SIZE =
            Key.optional(
                    "size",
                    Forms.orUnknown(
                            Forms.inOtherUnit(ListForm.acrossAlong(Forms.length(SIDES)), WIDEST)),
                    "Across and along, measured flat with all its hems; or unknown. An irregular"
                            + " cloth has an outline instead.",
                    "[132, 214]");
    public static final Key<List<AcrossAlong<Length>>> OUTLINE =
            Key.optional(
                    "outline",
                    corners(),
                    "An irregular cloth corner by corner, each across from the left and along from"
                            + " the top; instead of a size.",
                    "[[0, 0], [132, 0], [120, 214], [0, 214]]");
    private static final Key<Length> LEFT =
            Key.optional("left", Forms.length(SIDES), "The left side.", "214");
    private static final Key<Length> RIGHT =
            Key.optional("right", Forms.length(SIDES), "The right side.", "212.5");
    private static final Key<Length> DIAGONAL =
            Key.optional(
                    "diagonal",
                    Forms.length(LengthRange.of("5 cm", "30 m")),
                    "From the top left corner to the bottom right one.",
                    "251");
    public static final Key<Extent.Measured> MEASURED =
            Key.optional(
                    "sides measured",
                    MapForm.of(
                            "sides measured",
                            List.of(LEFT, RIGHT, DIAGONAL),
                            fields ->
                                    Optional.of(
                                            new Extent.Measured(
                                                    fields.get(LEFT),
                                                    fields.get(RIGHT),
                                                    fields.get(DIAGONAL)))),
                    "How far it is from square.",
                    "{left: 214, right: 212.5, diagonal: 251}");

    private ExtentKeys() {}

    /** Corners in order. */
    static Form<List<AcrossAlong<Length>>> corners() {
        return ListForm.of(
                "corners",
                ListForm.acrossAlong(Forms.length(LengthRange.of("0 mm", "20 m"))),
                3,
                MOST_CORNERS);
    }

    /** How large a cloth is, or unknown; nothing, and a mistake told, if it is not written. */
    public static Optional<Answer<Extent>> read(Fields fields) {
        if (fields.get(SIZE).isEmpty() && fields.get(OUTLINE).isEmpty()) {
            fields.tell(
                    fields.place(),
                    "a cloth without `size` or `outline`",
                    "`size: " + SIZE.example() + "`, or `size: unknown`");
            return Optional.empty();
        }
        Optional<Key<?>> chosen = Alternatives.of(SIZE, OUTLINE).chosen(fields);
        if (chosen.isEmpty()) {
            return Optional.empty();
        }
        return chosen.get().equals(SIZE) ? fourSided(fields) : irregular(fields);
    }

    private static Optional<Answer<Extent>> irregular(Fields fields) {
        if (Alternatives.isOwn(MEASURED, fields)) {
            fields.tell(
                    MEASURED,
                    "`sides measured` of a cloth with an outline",
                    "its corners where they really are");
            return Optional.empty();
        }
        Extent extent = new Extent.Irregular(fields.get(OUTLINE).orElseThrow());
        if (crosses(fields, OUTLINE, extent.outline().crossing())) {
            return Optional.empty();
        }
        AcrossAlong<Length> size = extent.size();
        if (size.across().isShorterThan(SMALLEST) || size.along().isShorterThan(SMALLEST)) {
            fields.tell(
                    OUTLINE,
                    "an outline smaller than " + fields.tape().print(SMALLEST),
                    "a cloth of " + SIDES.words(fields.tape()));
            return Optional.empty();
        }
        return Optional.of(Answer.known(extent));
    }

    /** Tells where an outline crosses itself, if it does. */
    static boolean crosses(Fields fields, Key<?> key, Optional<Point> crossing) {
        Tape tape = fields.tape();
        crossing.ifPresent(
                at ->
                        fields.tell(
                                key,
                                "an outline that crosses or touches itself at ["
                                        + tape.print(Length.ofComputedMillimetres(at.xMm()))
                                        + ", "
                                        + tape.print(Length.ofComputedMillimetres(at.yMm()))
                                        + "]",
                                "its corners in the order you meet them going round it once"));
        return crossing.isPresent();
    }

    private static Optional<Answer<Extent>> fourSided(Fields fields) {
        Optional<AcrossAlong<Length>> size = fields.get(SIZE).flatMap(Answer::toOptional);
        if (size.isEmpty()) {
            return Optional.of(Answer.unknown());
        }
        // The sides of the cloth it is like are not those of a cloth with a size of its own.
        boolean othersSides =
                Alternatives.isOwn(SIZE, fields) && !Alternatives.isOwn(MEASURED, fields);
        Optional<Extent.Measured> sides = othersSides ? Optional.empty() : fields.get(MEASURED);
        Extent.FourSided extent = new Extent.FourSided(size.get(), sides);
        return sidesAreNear(fields, extent) && diagonalFits(fields, extent)
                ? Optional.of(Answer.known(extent))
                : Optional.empty();
    }

    /** A side that is a tenth off what is written along is a slip, not a slant. */
    private static boolean sidesAreNear(Fields fields, Extent.FourSided extent) {
        Length along = extent.written().along();
        for (Length side : List.of(extent.left(), extent.right())) {
            if (side.minus(along).size().times(10).isLongerThan(along)) {
                fields.tell(
                        MEASURED,
                        "a side of "
                                + fields.tape().print(side)
                                + " on a cloth that is "
                                + fields.tape().print(along)
                                + " along",
                        "a side within a tenth of it, or an `outline` instead of `size`");
                return false;
            }
        }
        return true;
    }

    private static boolean diagonalFits(Fields fields, Extent.FourSided extent) {
        Optional<Length> diagonal = extent.sides().flatMap(Extent.Measured::diagonal);
        Length across = extent.written().across();
        Length longest = across.orLonger(extent.right());
        Length both = across.plus(extent.right());
        if (diagonal.isEmpty()
                || (diagonal.get().isLongerThan(longest) && diagonal.get().isShorterThan(both))) {
            return true;
        }
        Tape tape = fields.tape();
        fields.tell(
                MEASURED,
                "a diagonal of " + tape.print(diagonal.get()),
                "one longer than its longest side, "
                        + tape.print(longest)
                        + ", and shorter than two sides together, "
                        + tape.print(both));
        return false;
    }
}
