package secondbolt.lay.plan;

import java.util.List;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Placed;
import secondbolt.measure.Length;
import secondbolt.pattern.Alteration;
import secondbolt.pattern.AlterationSection;
import secondbolt.shape.Point;

/** How the maker writes where a copy of a piece lies: in her log of what is cut, and in a plan. */
final class PlacingForm {
    private static final Form<Placed<String>> NAME = Forms.placed(Forms.nameOf(60));

    private static final Key<Placed<String>> PIECE =
            Key.required(
                    "piece",
                    NAME,
                    "The piece, or one copy of it as a cutting plan names it.",
                    "front 2");
    private static final Key<Placed<String>> CLOTH =
            Key.required("cloth", NAME, "The cloth it lies on.", "left curtain");
    private static final Key<AcrossAlong<Length>> AT =
            Key.required(
                    "at",
                    ListForm.acrossAlong(Forms.length(LengthRange.of("0 mm", "50 m"))),
                    "Where the box round its cutting line begins, across and along on the trimmed"
                            + " and washed cloth, as a cutting plan tells it: from the left"
                            + " edge, or from the fold where `lies` says how the layers are cut.",
                    "[20, 60]");
    private static final Key<Integer> TURN =
            Key.optional("turn", Forms.whole(0, 359), "How far it was turned, in degrees.", "180");
    private static final Key<Boolean> MIRRORED =
            Key.optional("mirrored", Forms.yesOrNo(), "Whether it is the mirror image.", "yes");
    private static final Key<Lies> LIES =
            Key.optional(
                    "lies",
                    Forms.parsed(
                            "how it lies in the words of the cutting plan, such as `face down, top"
                                    + " up`: face up or face down; top up, top down, top to the"
                                    + " left or to the right; opened out, where a half is; on"
                                    + " folded cloth both layers, on the fold, or upper layer",
                            Lies::parse),
                    "How it lies, in the words of the cutting plan, in place of `turn` and"
                            + " `mirrored`; in quotation marks inside {}.",
                    "face down, top up");
    private static final Key<Boolean> TURNED_OVER =
            Key.optional(
                    "turned over",
                    Forms.yesOrNo(),
                    "Whether it is used with its wrong side out, as the other hand; only of a cloth"
                            + " that looks the same on both sides.",
                    "yes");
    static final Key<Optional<List<Alteration>>> ALTERED =
            Key.optional(
                    "altered",
                    Forms.either(
                            Forms.map(AlterationSection.KEY.form(), Optional::of),
                            Forms.either(
                                    Forms.word("none", Optional.of(List.<Alteration>of())),
                                    Forms.word("unknown", Optional.<List<Alteration>>empty()))),
                    "The alterations it had when it was cut, written as under `alterations`, or"
                            + " none: it keeps the shape it was cut in.",
                    "none");
    private static final Key<Boolean> SPOILT =
            Key.optional(
                    "spoilt",
                    Forms.yesOrNo(),
                    "Whether something went wrong with it: it is cut again, and other pieces may be"
                            + " cut from it. What is damaged is a flaw of the cloth.",
                    "yes");
    private static final Key<Boolean> CUT_ALREADY =
            Key.optional(
                    "cut",
                    Forms.yesOrNo(),
                    "Whether it is cut: a plan is ticked here. No if not told.",
                    "yes");

    /** In the log. */
    static final Form<Placing> CUT =
            MapForm.of(
                    "a piece that is cut",
                    List.of(PIECE, CLOTH, AT, LIES, TURN, MIRRORED, TURNED_OVER, SPOILT, ALTERED),
                    PlacingForm::placing);

    /** In a plan. */
    static final Form<PlanFile.Entry> PLANNED =
            MapForm.of(
                    "a piece of a plan",
                    List.of(
                            PIECE,
                            CLOTH,
                            AT,
                            LIES,
                            TURN,
                            MIRRORED,
                            CUT_ALREADY,
                            TURNED_OVER,
                            SPOILT,
                            ALTERED),
                    fields ->
                            placing(fields)
                                    .map(
                                            placing ->
                                                    new PlanFile.Entry(
                                                            placing,
                                                            fields.get(CUT_ALREADY).orElse(false)
                                                                    || placing.isSpoilt(),
                                                            fields.get(ALTERED).isPresent())));

    private PlacingForm() {}

    private static Optional<Placing> placing(Fields fields) {
        Optional<Lies> told = fields.get(LIES);
        if (told.isPresent() && !isToldOnce(fields)) {
            return Optional.empty();
        }
        AcrossAlong<Length> at = fields.require(AT);
        return Optional.of(
                new Placing(
                        fields.require(PIECE),
                        Optional.empty(),
                        fields.require(CLOTH),
                        new Point(at.across().millimetres(), at.along().millimetres()),
                        told.orElseGet(
                                () ->
                                        Lies.single(
                                                fields.get(MIRRORED), fields.get(TURN).orElse(0))),
                        fields.get(TURNED_OVER).orElse(false),
                        fields.get(SPOILT).orElse(false),
                        fields.get(ALTERED).flatMap(altered -> altered)));
    }

    private static boolean isToldOnce(Fields fields) {
        boolean isOnce = true;
        for (Key<?> other : List.of(TURN, MIRRORED)) {
            if (fields.get(other).isPresent()) {
                fields.tell(other, "`" + other.name() + "` beside `lies`", "one of the two");
                isOnce = false;
            }
        }
        return isOnce;
    }
}
