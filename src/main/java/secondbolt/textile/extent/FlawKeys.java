package secondbolt.textile.extent;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Rule;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.source.Place;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Placed;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;

/** The keys of one flaw and of one feature. */
public final class FlawKeys {
    private static final Form<Length> EXTENT = Forms.length(LengthRange.of("1 mm", "20 m"));
    private static final Key<String> WHAT =
            Key.required("what", Forms.text(60), "What it is, in your words.", "worn thin");
    private static final Key<AcrossAlong<Length>> AT =
            Key.optional(
                    "at",
                    ListForm.acrossAlong(Forms.length(LengthRange.of("0 mm", "20 m"))),
                    "Its centre, across from the left edge and along from the top, on the cloth as"
                            + " measured.",
                    "[97, 160]");
    private static final Key<AcrossAlong<Length>> SIZE =
            Key.optional("size", ListForm.acrossAlong(EXTENT), "Across and along.", "[12, 214]");
    private static final Key<Length> ROUND =
            Key.optional("round", EXTENT, "The diameter of a round one.", "3");
    private static final Key<List<AcrossAlong<Length>>> OUTLINE =
            Key.optional(
                    "outline",
                    ExtentKeys.corners(),
                    "Any other, corner by corner; instead of `at` and a size.",
                    "[[120, 10], [131, 8], [131, 60], [124, 52]]");
    private static final Key<Boolean> HIDDEN_USE =
            Key.optional(
                    "hidden use",
                    Forms.yesOrNo(),
                    "Whether it is good enough for pieces that are hidden: facings, pocket bags. No"
                            + " if not told.",
                    "yes");
    private static final Key<Placed<PieceEdge>> KEEP =
            Key.optional(
                    "keep",
                    Forms.placed(
                            Forms.map(
                                    Forms.checked(
                                            Forms.text(120),
                                            text -> PieceEdge.parse(text).isPresent(),
                                            "a straight edge of a piece, such as `pocket.top`"),
                                    text -> PieceEdge.parse(text).orElseThrow())),
                    "The edge of a piece that is made of it, instead of `use`: that edge lies along"
                            + " one long side of the feature, and the feature in the piece. No"
                            + " other piece lies on it.",
                    "pocket.top");
    private static final Key<String> USE =
            Key.optional(
                    "use",
                    Forms.choice(Map.of("avoid", "avoid")),
                    "`avoid`: no piece may lie on it. So it is taken if neither this nor `keep` is"
                            + " told.",
                    "avoid");

    private static final Rule ONE_SHAPE = Rule.one("size", "round", "outline");
    private static final Rule PLACED = Rule.when(Rule.some("size", "round"), Rule.has("at"));
    private static final Rule DRAWN = Rule.when(Rule.has("outline"), Rule.not(Rule.has("at")));

    /** A flaw, with the place that says where it lies. */
    public static final MapForm<Placed<Flaw>> FLAW =
            MapForm.of(
                            "a flaw",
                            List.of(WHAT, AT, SIZE, ROUND, OUTLINE, HIDDEN_USE),
                            fields -> flaw(fields, kind(fields), Optional.empty()))
                    .with(ONE_SHAPE, PLACED, DRAWN);

    /** A feature, likewise. */
    public static final MapForm<Placed<Flaw>> FEATURE =
            MapForm.of(
                            "a feature",
                            List.of(WHAT, AT, SIZE, ROUND, OUTLINE, USE, KEEP),
                            FlawKeys::feature)
                    .with(
                            ONE_SHAPE,
                            PLACED,
                            DRAWN,
                            Rule.not(Rule.has("use", "keep")),
                            Rule.when(Rule.has("keep"), Rule.has("size")));

    private FlawKeys() {}

    private static Flaw.Kind kind(Fields fields) {
        return fields.get(HIDDEN_USE).orElse(false) ? Flaw.Kind.HIDDEN_USE : Flaw.Kind.UNSOUND;
    }

    private static Optional<Placed<Flaw>> feature(Fields fields) {
        Optional<Placed<PieceEdge>> keep = fields.get(KEEP);
        if (keep.isPresent() && fields.get(USE).isPresent()) {
            fields.tell(KEEP, "`use` and `keep` together", "one of them");
            return Optional.empty();
        }
        if (keep.isPresent() && fields.get(SIZE).isEmpty()) {
            fields.tell(
                    KEEP,
                    "`keep` on a feature that is no strip",
                    "`at` and `size` of the strip that becomes the edge");
            return Optional.empty();
        }
        return flaw(fields, Flaw.Kind.FEATURE, keep);
    }

    private static Optional<Placed<Flaw>> flaw(
            Fields fields, Flaw.Kind kind, Optional<Placed<PieceEdge>> keptFor) {
        String what = fields.require(WHAT);
        return patch(fields)
                .map(patch -> new Placed<>(new Flaw(what, patch, kind, keptFor), place(fields)));
    }

    private static Place place(Fields fields) {
        return fields.place(fields.get(AT).isPresent() ? AT : OUTLINE);
    }

    private static Optional<Patch> patch(Fields fields) {
        List<Key<?>> shapes =
                List.<Key<?>>of(SIZE, ROUND, OUTLINE).stream()
                        .filter(key -> fields.get(key).isPresent())
                        .toList();
        if (shapes.size() != 1) {
            Place place = shapes.isEmpty() ? fields.place() : fields.place(shapes.get(1));
            fields.tell(
                    place,
                    shapes.isEmpty()
                            ? "`" + fields.require(WHAT) + "` without its size"
                            : "`"
                                    + shapes.get(0).name()
                                    + "` and `"
                                    + shapes.get(1).name()
                                    + "` together",
                    "one of `size: [across, along]`, `round: diameter` or `outline: [[…], …]`");
            return Optional.empty();
        }
        return fields.get(OUTLINE).isPresent() ? drawn(fields) : centred(fields);
    }

    private static Optional<Patch> drawn(Fields fields) {
        if (fields.get(AT).isPresent()) {
            fields.tell(AT, "`at` and `outline` together", "the outline alone: it says where");
            return Optional.empty();
        }
        Patch patch = new Patch.Drawn(fields.get(OUTLINE).orElseThrow());
        return ExtentKeys.crosses(fields, OUTLINE, patch.outline().crossing())
                ? Optional.empty()
                : Optional.of(patch);
    }

    private static Optional<Patch> centred(Fields fields) {
        Optional<AcrossAlong<Length>> at = fields.get(AT);
        if (at.isEmpty()) {
            fields.tell(
                    fields.place(),
                    "`" + fields.require(WHAT) + "` without `at`",
                    "`at: [across, along]`, its centre from the left edge and from the top");
            return Optional.empty();
        }
        return Optional.of(
                fields.get(SIZE)
                        .<Patch>map(size -> new Patch.Rectangle(at.get(), size))
                        .orElseGet(
                                () -> new Patch.Round(at.get(), fields.get(ROUND).orElseThrow())));
    }
}
