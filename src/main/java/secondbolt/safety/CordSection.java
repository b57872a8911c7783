package secondbolt.safety;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.Answer;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Placed;
import secondbolt.measure.Length;

/** The {@code cords} and {@code nightwear} sections of the project file, and how they are read. */
final class CordSection {
    private static final Key<Answer<CordPlace>> AT =
            Key.optional(
                    "at",
                    Forms.orUnknown(Forms.choice(CordPlace.values(), CordPlace::word)),
                    "Where it lies on the body: at neck and hood it can strangle a child.",
                    "waist");
    private static final Key<Answer<Length>> FREE =
            Key.optional(
                    "free",
                    Forms.either(
                            Forms.orUnknown(Forms.length(LengthRange.of("0 mm", "3 m"))),
                            Forms.none(Answer.known(Length.ZERO))),
                    "How long each free end is, the garment open at its widest; `none` where no end"
                            + " hangs free.",
                    "7");
    private static final Key<Placed<String>> OF =
            Key.optional(
                    "of",
                    Forms.placed(Forms.nameOf(60)),
                    "The piece it is cut from, if it has another name.",
                    "tie");
    private static final Form<ToldCord> FORM =
            Forms.either(
                    MapForm.of("a cord", List.of(AT, FREE, OF), CordSection::cord),
                    Forms.word("no", ToldCord.NO_CORD));

    /** Cords under the name of the closure, the piece or the hem that they are, or of their own. */
    static final Key<Map<String, ToldCord>> KEY =
            Key.optional(
                    "cords",
                    Forms.either(
                            NamedForm.of("cord", FORM), Forms.none(Map.<String, ToldCord>of())),
                    "Cords, ties and drawstrings, each under the name of its closure, its piece or"
                            + " its hem, or under a name of your own; `no` for what is called like"
                            + " one and is none.",
                    "{back ties: {at: waist, free: 7}}");

    /** Whether it is slept in. */
    static final Key<Answer<Boolean>> NIGHTWEAR =
            Key.optional(
                    "nightwear",
                    Forms.orUnknown(Forms.yesOrNo()),
                    "Whether it is slept in: there are rules for children's nightwear, because"
                            + " loose cloth catches fire.",
                    "no");

    private CordSection() {}

    private static Optional<ToldCord> cord(Fields fields) {
        return Optional.of(
                new ToldCord(
                        true,
                        fields.get(AT).flatMap(Answer::toOptional),
                        fields.get(FREE).flatMap(Answer::toOptional),
                        fields.get(OF)));
    }
}
