package secondbolt.supply.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Rule;
import secondbolt.file.form.Forms;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;
import secondbolt.measure.Mass;
import secondbolt.measure.Parsed;
import secondbolt.measure.Tape;
import secondbolt.measure.Volume;
import secondbolt.task.Amount;

/** The keys that say how much of a thing, one of which is written at most. */
final class AmountKeys {
    /** More than anyone buys for one project. */
    private static final int MOST = 10_000;

    private static final LengthRange LENGTHS = LengthRange.of("1 mm", "500 m");
    private static final Mass MOST_MASS = Mass.KILOGRAM.plus(Mass.ofGrams("49000"));
    private static final Volume MOST_VOLUME = Volume.ofMillilitres("100000");
    private static final String MASS_WORDS = "a mass such as `250 g` or `8 oz`, up to 50 kg";
    private static final String VOLUME_WORDS = "a volume such as `1 l` or `2 cup`, up to 100 l";

    private static final Key<Integer> COUNT =
            Key.optional("count", Forms.whole(1, MOST), "How many, of what is counted.", "7");
    private static final Key<Length> LENGTH =
            Key.optional(
                    "length", Forms.length(LENGTHS), "How long, of what is cut off a roll.", "2 m");
    private static final Key<Mass> MASS =
            Key.optional(
                    "mass",
                    Forms.parsed(MASS_WORDS, AmountKeys::mass),
                    "How heavy, of what is weighed.",
                    "250 g");
    private static final Key<Volume> VOLUME =
            Key.optional(
                    "volume",
                    Forms.parsed(VOLUME_WORDS, AmountKeys::volume),
                    "How much of a liquid; spoons, cups and gallons are US measures.",
                    "1 l");

    /** All four. */
    static final List<Key<?>> ALL = List.of(COUNT, LENGTH, MASS, VOLUME);

    private AmountKeys() {}

    /** Not two of them. */
    static List<Rule> rules() {
        List<Rule> rules = new ArrayList<>();
        for (int i = 0; i < ALL.size(); i++) {
            for (int j = i + 1; j < ALL.size(); j++) {
                rules.add(Rule.not(Rule.has(ALL.get(i).name(), ALL.get(j).name())));
            }
        }
        return rules;
    }

    /** Whether no two are written; if they are it is told. */
    static boolean isOne(Fields fields) {
        List<Key<?>> written = ALL.stream().filter(key -> fields.get(key).isPresent()).toList();
        if (written.size() > 1) {
            fields.tell(
                    written.get(1),
                    "`"
                            + written.get(0).name()
                            + "` and `"
                            + written.get(1).name()
                            + "` of one thing",
                    "one of them: what it is sold by");
        }
        return written.size() < 2;
    }

    /** What is written, if anything is. */
    static Optional<Amount> amount(Fields fields) {
        List<Optional<Amount>> all =
                List.of(
                        fields.get(COUNT).map(count -> new Amount.Pieces(count, "")),
                        fields.get(LENGTH).map(Amount.Run::new),
                        fields.get(MASS).map(Amount.Weighed::new),
                        fields.get(VOLUME).map(Amount.Liquid::new));
        return all.stream().flatMap(Optional::stream).findFirst();
    }

    /** A number of things, or a measure with its unit; under a key of any kind of thing. */
    static Form<Quantity> number(int least) {
        return Forms.either(
                Forms.map(
                        Forms.whole(
                                least, MOST, ", or a measure such as `5 yd`, `8 oz` or `1 cup`"),
                        Quantity::ofCount),
                Forms.phrase(
                        "a number, or a measure such as `5 yd`, `8 oz` or `1 cup`",
                        "[0-9.½¼¾].*",
                        AmountKeys::measure));
    }

    private static Parsed<Quantity> measure(String text) {
        Optional<Amount> length =
                value(Length.parse(text, Tape.CENTIMETRE))
                        .filter(LENGTHS::holds)
                        .map(Amount.Run::new);
        Optional<Amount> mass = mass(text).map(Amount.Weighed::new);
        Optional<Amount> volume = volume(text).map(Amount.Liquid::new);
        return length.or(() -> mass)
                .or(() -> volume)
                .<Parsed<Quantity>>map(amount -> new Parsed.Value<>(Quantity.of(amount)))
                .orElseGet(
                        () ->
                                new Parsed.Refusal<>(
                                        "`" + text + "`",
                                        "a number, or a measure such as `5 yd`, `8 oz` or `1"
                                                + " cup`"));
    }

    private static Optional<Mass> mass(String text) {
        return value(Mass.parse(text))
                .filter(mass -> mass.isPositive() && mass.compareTo(MOST_MASS) <= 0);
    }

    private static Optional<Volume> volume(String text) {
        return value(Volume.parse(text))
                .filter(v -> v.millilitres() > 0 && v.compareTo(MOST_VOLUME) <= 0);
    }

    private static <T> Optional<T> value(Parsed<T> parsed) {
        return parsed.fold(Optional::of, refusal -> Optional.empty());
    }
}
