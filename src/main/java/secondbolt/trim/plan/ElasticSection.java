package secondbolt.trim.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Rule;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.Answer;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Placed;
import secondbolt.measure.Length;
import secondbolt.measure.Share;
import secondbolt.pattern.EdgeSum;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.Passage;

/** The section {@code elastic}: its keys, and how they are read. */
public final class ElasticSection {
    private static final Key<Length> WIDTH =
            Key.required(
                    "width",
                    Forms.length(LengthRange.of("3 mm", "12 cm")),
                    "Of the elastic; measure it, for the packet may name another unit.",
                    "25 mm");
    private static final Key<BodyMeasure> ROUND =
            Key.optional(
                    "round",
                    Forms.choice(measures()),
                    "What of the body it sits on; the wearer's measure is taken.",
                    "waist");
    private static final Key<Passage> OVER =
            Key.optional(
                    "over",
                    Passage.FORM,
                    "What of the body it must be pulled over when the garment is put on.",
                    "hips");
    private static final Key<Placed<EdgeSum>> ON =
            Key.optional(
                    "on",
                    EdgeSum.ROW,
                    "The edges that are drawn in, each as often as it goes round: twice where a piece"
                            + " is drawn half or cut as a pair.",
                    "[2 front.waist, 2 back.waist]");
    private static final Key<Answer<Length>> LOOP =
            Key.optional(
                    "loop",
                    Forms.orUnknown(Forms.length(LengthRange.of("8 cm", "2 m"))),
                    "How long it is round when its ends are joined, at rest.",
                    "71");
    private static final Key<Length> LESS =
            Key.optional(
                    "less",
                    Forms.length(LengthRange.of("0 mm", "30 cm")),
                    "Or how much shorter it is than the body.",
                    "5");
    private static final Key<Length> OVERLAP =
            Key.optional(
                    "overlap",
                    Forms.length(LengthRange.of("0 mm", "6 cm")),
                    "How far its ends overlap where they are joined; 2.5 cm (1 in) if not told,"
                            + " nothing where they are butted on a tape.",
                    "2.5");
    private static final Key<Length> AT_REST =
            Key.required("of", Forms.length(LengthRange.of("2 cm", "1 m")), "At rest.", "10");
    private static final Key<Length> PULLED =
            Key.required(
                    "to",
                    Forms.length(LengthRange.of("2 cm", "4 m")),
                    "What that becomes when you pull as hard as it is pulled in dressing.",
                    "16");
    private static final Key<Answer<Share>> STRETCH =
            Key.optional(
                    "stretch",
                    Forms.orUnknown(
                            MapForm.of(
                                    "a test of elastic",
                                    List.of(AT_REST, PULLED),
                                    ElasticSection::stretched)),
                    "A test of the very elastic: how long a part of it becomes when it is pulled.",
                    "{of: 10, to: 16}");
    private static final Key<Elastic.Casing> CASING =
            Key.optional(
                    "casing",
                    Forms.choice(Elastic.Casing.values(), Elastic.Casing::word),
                    "What it runs in: the edge folded down, as if not told, or a strip sewn on.",
                    "folded");

    /** The section: elastics under names of the maker's own. */
    public static final Key<Map<String, Elastic>> KEY =
            Key.optional(
                    "elastic",
                    NamedForm.of("elastic", form()),
                    "Elastic that draws an edge in, under a name of your own.",
                    "{waist: {width: 25 mm, round: waist, over: hips}}");

    private ElasticSection() {}

    private static Form<Elastic> form() {
        return MapForm.of(
                        "an elastic",
                        List.of(WIDTH, ROUND, OVER, ON, LOOP, LESS, OVERLAP, STRETCH, CASING),
                        ElasticSection::elastic)
                .with(Rule.any(Rule.not(Rule.has("loop", "less")), Rule.is("loop", "unknown")));
    }

    private static Map<String, BodyMeasure> measures() {
        Map<String, BodyMeasure> measures = new LinkedHashMap<>();
        Stream.of(
                        BodyMeasure.WAIST,
                        BodyMeasure.HIP,
                        BodyMeasure.UNDER_BUST,
                        BodyMeasure.HEAD,
                        BodyMeasure.NECK,
                        BodyMeasure.UPPER_ARM,
                        BodyMeasure.WRIST,
                        BodyMeasure.THIGH,
                        BodyMeasure.KNEE,
                        BodyMeasure.CALF,
                        BodyMeasure.ANKLE)
                .forEach(measure -> measures.put(measure.word(), measure));
        return measures;
    }

    private static Optional<Share> stretched(Fields fields) {
        Length pulled = fields.require(PULLED);
        Length rest = fields.require(AT_REST);
        if (pulled.isShorterThan(rest)) {
            fields.tell(
                    PULLED,
                    "an elastic that is pulled shorter than it is",
                    "a longer `to`: `of` is its length at rest, `to` when it is pulled");
            return Optional.empty();
        }
        return Optional.of(Share.left(pulled, rest));
    }

    private static Optional<Elastic> elastic(Fields fields) {
        Optional<Length> loop = fields.get(LOOP).flatMap(Answer::toOptional);
        if (loop.isPresent() && fields.get(LESS).isPresent()) {
            fields.tell(
                    LESS,
                    "`less` beside `loop`",
                    "one of both: `loop` as it was tried on, or `less` than the body");
            return Optional.empty();
        }
        return Optional.of(
                new Elastic(
                        fields.require(WIDTH),
                        fields.get(ROUND),
                        fields.get(OVER),
                        fields.get(ON),
                        new Elastic.Fit(loop, fields.get(LESS), fields.get(OVERLAP)),
                        fields.get(STRETCH).flatMap(Answer::toOptional),
                        fields.get(CASING).orElse(Elastic.Casing.FOLDED)));
    }
}
