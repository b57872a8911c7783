package secondbolt.wearer;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Reading;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.source.Node;
import secondbolt.file.value.Answer;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/** The {@code wearer} section of the project file: its keys, and how they are read. */
public final class WearerSection {
    private static final String ADULT = "adult";
    private static final String UNKNOWN = "unknown";
    private static final int OLDEST = 120;

    /** Girths of trunks from a child of four to the largest size charts (common practice). */
    private static final LengthRange GIRTHS = LengthRange.of("48 cm", "178 cm");

    private static final Pattern FIGURES = Pattern.compile("[\\d.,/\\s½¼¾]+");

    private static final Key<Answer<Wearer.Age>> AGE =
            Key.optional(
                            "age",
                            new AgeForm(),
                            "Adult, or completed years (0 for under one): it decides cautions. Never taken"
                                    + " as adult if not told.",
                            ADULT)
                    .kept();
    private static final MeasureKeys<Answer<Length>> MEASURES =
            MeasureKeys.of(
                    measure -> Forms.orUnknown(Forms.length(measure.range())),
                    measure ->
                            "How it is taken: "
                                    + measure.takenOnEither()
                                    + " ("
                                    + measure.source()
                                    + ").",
                    BodyMeasure::example);
    private static final Key<Map<BodyMeasure, Answer<Length>>> MEASUREMENTS =
            Key.optional(
                            "measurements",
                            MapForm.of(
                                    "the measurements",
                                    MEASURES.keys(),
                                    fields -> Optional.of(MEASURES.read(fields))),
                            "The body's measurements, over the underwear worn with the garment.",
                            "{bust: 96, waist: 80, hip: 104}")
                    .kept();

    /** The section. */
    public static final Key<Wearer> KEY =
            Key.optional(
                            "wearer",
                            MapForm.of(
                                    "a wearer", List.of(AGE, MEASUREMENTS), WearerSection::wearer),
                            "Who wears it: age and measurements.",
                            "{age: adult, measurements: {bust: 96, hip: 104}}")
                    .kept();

    private WearerSection() {}

    private static Optional<Wearer> wearer(Fields fields) {
        Wearer wearer =
                new Wearer(
                        fields.get(AGE).flatMap(Answer::toOptional),
                        fields.get(MEASUREMENTS).orElse(Map.of()));
        boolean isSmall = wearer.age().flatMap(Wearer.Age::years).filter(y -> y <= 3).isPresent();
        long asked =
                wearer.measurements().entrySet().stream()
                        .filter(e -> e.getKey().isRoundTheTrunk() && !isSmall)
                        .filter(e -> looksLikeTheOtherUnit(fields, e.getKey(), e.getValue()))
                        .count();
        return asked == 0 ? Optional.of(wearer) : Optional.empty();
    }

    private static boolean looksLikeTheOtherUnit(
            Fields fields, BodyMeasure measure, Answer<Length> answer) {
        Tape tape = fields.tape();
        Optional<String> bare =
                fields.lettersIn(MEASUREMENTS, measure.word())
                        .filter(text -> fields.isTapeTold() && FIGURES.matcher(text).matches())
                        .filter(text -> !GIRTHS.holds(answer.toOptional().orElseThrow()))
                        .filter(text -> GIRTHS.holds(text, tape.other()));
        bare.ifPresent(
                text ->
                        fields.tell(
                                fields.placeIn(MEASUREMENTS, measure.word()),
                                "`"
                                        + text
                                        + "`, a "
                                        + measure.word()
                                        + " of "
                                        + text
                                        + " "
                                        + tape.symbol(),
                                "`"
                                        + text
                                        + " "
                                        + tape.other().symbol()
                                        + "`, or `"
                                        + text
                                        + " "
                                        + tape.symbol()
                                        + "` if that is meant"));
        return bare.isPresent();
    }

    /** Reads all three ways as one, so that a misspelt {@code adult} is told with all of them. */
    private record AgeForm(Form<Answer<Wearer.Age>> reads, Form<Answer<Wearer.Age>> describes)
            implements Form<Answer<Wearer.Age>> {
        private static final String WORDS =
                "`adult`, a whole number of years from 0 (under one) to 120, or `unknown`";

        AgeForm() {
            this(anyText(), schemas());
        }

        private static Form<Answer<Wearer.Age>> anyText() {
            return Forms.map(
                    Forms.checked(Forms.text(40), AgeForm::isRight, WORDS), AgeForm::answer);
        }

        private static Form<Answer<Wearer.Age>> schemas() {
            Form<Answer<Wearer.Age>> years =
                    Forms.orUnknown(Forms.map(Forms.whole(0, OLDEST), Wearer.Age::ofYears));
            return Forms.either(years, Forms.word(ADULT, Answer.known(Wearer.Age.adult())));
        }

        private static boolean isRight(String text) {
            return text.equals(ADULT)
                    || text.equals(UNKNOWN)
                    || (text.matches("\\d{1,3}") && Integer.parseInt(text) <= OLDEST);
        }

        private static Answer<Wearer.Age> answer(String text) {
            if (text.equals(UNKNOWN)) {
                return Answer.unknown();
            }
            return Answer.known(
                    text.equals(ADULT)
                            ? Wearer.Age.adult()
                            : Wearer.Age.ofYears(Integer.parseInt(text)));
        }

        @Override
        public Optional<Answer<Wearer.Age>> read(Node node, Reading reading) {
            return reads.read(node, reading);
        }

        @Override
        public boolean suits(Node node) {
            return reads.suits(node);
        }

        @Override
        public String words() {
            return WORDS;
        }

        @Override
        public Map<String, Object> schema() {
            return describes.schema();
        }
    }
}
