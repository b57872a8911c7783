package secondbolt.file.form;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import secondbolt.file.Form;
import secondbolt.file.Reading;
import secondbolt.file.Schemas;
import secondbolt.file.Spelling;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.Node;
import secondbolt.file.source.SourceFile;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.Answer;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Placed;
import secondbolt.file.value.Trouble;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Length;
import secondbolt.measure.Mass;
import secondbolt.measure.Parsed;
import secondbolt.measure.Share;
import secondbolt.measure.Tape;

/**
 * The forms of single values; {@link ListForm}, {@link NamedForm} and {@link MapForm} hold more.
 */
public final class Forms {
    private static final Pattern BLANKS = Pattern.compile("[ \\t\\n]++");

    /** Longer is no phrase of ours. */
    private static final int LONGEST_PHRASE = 2000;

    private Forms() {}

    /** Text in any language in one line, of so many letters at most. */
    public static Form<String> text(int mostLetters) {
        return map(lines(mostLetters), Forms::oneLine);
    }

    private static String oneLine(String text) {
        return text.indexOf('\n') < 0 && text.indexOf('\t') < 0
                ? text
                : BLANKS.matcher(text).replaceAll(" ");
    }

    /** Text in any language, in lines as they are written, of so many letters at most. */
    public static Form<String> lines(int mostLetters) {
        Map<String, Object> schema = Schemas.freeText();
        schema.put("maxLength", mostLetters);
        String words = "text of " + mostLetters + " letters at most";
        Form<String> form =
                new TextForm<>(
                        words,
                        schema,
                        (text, reading) ->
                                text.codePointCount(0, text.length()) <= mostLetters
                                        ? new Parsed.Value<>(text)
                                        : refuse(
                                                "text of "
                                                        + text.codePointCount(0, text.length())
                                                        + " letters",
                                                words));
        return new AdaptedForm<>(form, Forms::whole);
    }

    /** The name of something that stands elsewhere in the file; {@code unknown} names nothing. */
    public static Form<String> nameOf(int mostLetters) {
        return checked(
                text(mostLetters),
                name -> !name.equals("unknown"),
                "the name of something in this file, of " + mostLetters + " letters at most");
    }

    /** A text that no # has cut off, or what it may have been is asked. */
    private static Optional<String> whole(String text, Node node, Reading reading) {
        Optional<String> cut = node.asText().flatMap(reading::cutOff);
        cut.ifPresent(
                rest ->
                        reading.tell(
                                node.place(),
                                "`" + text + "`, which a # cuts off before `" + rest + "`",
                                "`\""
                                        + text
                                        + " "
                                        + rest
                                        + "\"` in quotation marks, or a space"
                                        + " and a word after the # if it begins a note of your"
                                        + " own"));
        return cut.isPresent() ? Optional.empty() : Optional.of(text);
    }

    /** A whole number in a range, both ends included. */
    public static Form<Integer> whole(int least, int most) {
        return whole(least, most, "");
    }

    /**
     * The same, told with what is done beyond the range.
     *
     * @param beyond goes on after the range, such as {@code ; more is cut in two}
     */
    public static Form<Integer> whole(int least, int most, String beyond) {
        Map<String, Object> schema = Schemas.number("integer", "^[+-]?\\d{1,9}$");
        schema.put("minimum", least);
        schema.put("maximum", most);
        String words = "a whole number from " + least + " to " + most + beyond;
        return new TextForm<>(
                words,
                schema,
                (text, reading) -> {
                    boolean whole = text.matches("[+-]?\\d{1,9}");
                    int number = whole ? Integer.parseInt(text) : 0;
                    return whole && number >= least && number <= most
                            ? new Parsed.Value<>(number)
                            : refuse("`" + text + "`", words);
                },
                true);
    }

    /** A length in a range; a bare number is on the project's tape. */
    public static Form<Length> length(LengthRange range) {
        return length(range, "");
    }

    /**
     * The same, told with why it must be known.
     *
     * @param why goes on after the range, such as {@code , which the cutting line needs}
     */
    public static Form<Length> length(LengthRange range, String why) {
        return new LengthForm(range, why);
    }

    /**
     * A size whose bare figures, too wide for cloth on the file's tape and not on the other, are
     * asked about: 152 by 213 in a file in inches.
     *
     * @param usual how wide it is in the trade
     */
    public static Form<AcrossAlong<Length>> inOtherUnit(
            Form<AcrossAlong<Length>> form, LengthRange usual) {
        return new AdaptedForm<>(form, (size, node, reading) -> usual(size, node, reading, usual));
    }

    private static Optional<AcrossAlong<Length>> usual(
            AcrossAlong<Length> size, Node node, Reading reading, LengthRange usual) {
        List<String> bare =
                node.asListing().stream()
                        .flatMap(list -> list.items().stream())
                        .flatMap(item -> item.asText().stream())
                        .map(Node.Text::text)
                        .toList();
        Tape other = reading.tape().other();
        boolean isSlip =
                bare.size() == 2
                        && reading.isTapeTold()
                        && bare.stream().allMatch(LengthForm::isBare)
                        && !usual.holds(size.across())
                        && usual.holds(bare.get(0), other);
        if (isSlip) {
            reading.tell(
                    node.place(),
                    "a size of "
                            + reading.tape().print(size.across())
                            + " across, wider than cloth is made",
                    with(bare, other) + ", or " + with(bare, reading.tape()) + " if that is meant");
        }
        return isSlip ? Optional.empty() : Optional.of(size);
    }

    private static String with(List<String> bare, Tape tape) {
        return bare.stream()
                .map(figure -> figure + " " + tape.symbol())
                .collect(Collectors.joining(", ", "`[", "]`"));
    }

    /** A plain number in a range, such as the fullness of gathers. */
    public static Form<BigDecimal> number(String least, String most) {
        Map<String, Object> schema = Schemas.number("number", "^\\d{1,6}([.,]\\d{1,6})?$");
        schema.put("minimum", Double.parseDouble(least));
        schema.put("maximum", Double.parseDouble(most));
        String words = "a number from " + least + " to " + most;
        return new TextForm<>(
                words,
                schema,
                (text, reading) -> {
                    boolean plain = text.matches("\\d{1,6}([.,]\\d{1,6})?");
                    BigDecimal number =
                            plain ? new BigDecimal(text.replace(',', '.')) : BigDecimal.ZERO;
                    return plain
                                    && number.compareTo(new BigDecimal(least)) >= 0
                                    && number.compareTo(new BigDecimal(most)) <= 0
                            ? new Parsed.Value<>(number)
                            : refuse("`" + text + "`", words);
                },
                true);
    }

    /** The same form, its value with the place it stands at. */
    public static <T> Form<Placed<T>> placed(Form<T> form) {
        return new AdaptedForm<>(
                form, (value, node, reading) -> Optional.of(new Placed<>(value, node.place())));
    }

    /** Text that must mean something. */
    public static <T> Form<T> parsed(String words, Function<String, Optional<T>> parse) {
        return new TextForm<>(
                words,
                Schemas.ofType("string"),
                (text, reading) ->
                        Optional.of(text)
                                .filter(Forms::mayBePhrase)
                                .flatMap(parse)
                                .<Parsed<T>>map(Parsed.Value::new)
                                .orElseGet(() -> refuse("`" + text + "`", words)));
    }

    /**
     * Words with a number perhaps, to be one of several forms; a text without a letter is
     * another's.
     *
     * @param words what is right
     * @param letters all that it takes, as a pattern of JSON Schema
     * @param parse reads it, or says what would be right
     */
    public static <T> Form<T> phrase(
            String words, String letters, Function<String, Parsed<T>> parse) {
        Map<String, Object> schema = Schemas.ofType("string");
        schema.put("pattern", "^" + letters + "$");
        return new NarrowForm<>(
                new TextForm<>(
                        words,
                        schema,
                        (text, reading) ->
                                mayBePhrase(text)
                                        ? parse.apply(text)
                                        : refuse("`" + text + "`", words)),
                text -> text.codePoints().anyMatch(Character::isLetter));
    }

    private static boolean mayBePhrase(String text) {
        return text.length() <= LONGEST_PHRASE;
    }

    /**
     * The path of another file in the project's folder.
     *
     * @param words what is right
     * @param read reads it, and tells the mistakes in it
     */
    public static <T> Form<T> file(
            String words, BiFunction<SourceFile, Mistakes, Optional<T>> read) {
        return new FileForm<>(words, read);
    }

    /** A cloth weight from 10 to 2000 g/m²: from gauze to a rug. */
    public static Form<ClothWeight> clothWeight() {
        String words = "a cloth weight of 10 g/m2 to 2000 g/m2";
        String inch = "a cloth weight of 0.3 oz/yd2 to 58.9 oz/yd2";
        return new TapeForm<>(
                new TextForm<>(
                        words,
                        Schemas.ofType("string"),
                        (text, reading) ->
                                inRange(
                                        ClothWeight.parse(text),
                                        w ->
                                                w.gramsPerSquareMetre() >= 10
                                                        && w.gramsPerSquareMetre() <= 2000,
                                        text,
                                        reading.tape() == Tape.INCH ? inch : words)),
                inch);
    }

    /** A mass of cloth from 1 g to 50 kg. */
    public static Form<Mass> mass() {
        String words = "a mass of 1 g to 50 kg";
        String inch = "a mass of 0.04 oz to 110 lb";
        return new TapeForm<>(
                new TextForm<>(
                        words,
                        Schemas.ofType("string"),
                        (text, reading) ->
                                inRange(
                                        Mass.parse(text),
                                        m -> m.grams() >= 1 && m.grams() <= 50_000,
                                        text,
                                        reading.tape() == Tape.INCH ? inch : words)),
                inch);
    }

    /** A share above 0 % and up to 100 %. */
    public static Form<Share> share() {
        String words = "a share such as 65 %, above 0 % and up to 100 %";
        return new TextForm<>(
                words,
                Schemas.ofType("string"),
                (text, reading) ->
                        inRange(
                                Share.parse(text),
                                s -> s.fraction() > 0 && s.fraction() <= 1,
                                text,
                                words));
    }

    /** A day, as {@code 2026-05-01}. */
    public static Form<LocalDate> date() {
        Map<String, Object> schema = Schemas.ofType("string");
        schema.put("format", "date");
        String words = "a day such as 2026-05-01";
        return new TextForm<>(
                words,
                schema,
                (text, reading) -> {
                    try {
                        return new Parsed.Value<>(LocalDate.parse(text));
                    } catch (DateTimeException e) {
                        return refuse("`" + text + "`", words);
                    }
                });
    }

    /** One of a few words. */
    public static <T> Form<T> choice(Map<String, T> byWord) {
        Map<String, T> choices = new LinkedHashMap<>(byWord);
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("enum", Schemas.choices(choices.keySet()));
        String words =
                choices.size() == 1
                        ? "`" + choices.keySet().iterator().next() + "`"
                        : "one of " + Spelling.quoted(choices.keySet());
        return new TextForm<>(
                words,
                schema,
                (text, reading) -> {
                    T value = choices.get(text);
                    if (value != null) {
                        return new Parsed.Value<>(value);
                    }
                    Optional<String> near = Spelling.nearest(text, choices.keySet());
                    return refuse(
                            "`" + text + "`", near.map(n -> "`" + n + "`, ").orElse("") + words);
                });
    }

    /** One of an enum's words. */
    public static <T> Form<T> choice(T[] values, Function<T, String> word) {
        Map<String, T> byWord = new LinkedHashMap<>();
        for (T value : values) {
            byWord.put(word.apply(value), value);
        }
        return choice(byWord);
    }

    /** {@code yes} or {@code no}. */
    public static Form<Boolean> yesOrNo() {
        Map<String, Boolean> words = new LinkedHashMap<>();
        words.put("yes", true);
        words.put("no", false);
        return choice(words);
    }

    /** {@code true} or {@code false}, or {@code yes} or {@code no}. */
    public static Form<Boolean> trueOrFalse() {
        Map<String, Boolean> words = new LinkedHashMap<>();
        words.put("true", true);
        words.put("false", false);
        words.put("yes", true);
        words.put("no", false);
        return choice(words);
    }

    /** A value, or {@code unknown}. */
    public static <T> Form<Answer<T>> orUnknown(Form<T> form) {
        return EitherForm.of(map(form, Answer::known), word("unknown", Answer.<T>unknown()));
    }

    /** One word that stands for a value. */
    public static <T> Form<T> word(String word, T value) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("const", word);
        return new WordForm<>(word, value, schema);
    }

    /** What a person says where there is nothing: {@code none} or {@code no}. */
    public static <T> Form<T> none(T nothing) {
        Map<String, Object> schema = new LinkedHashMap<>();
        // YAML 1.1 reads the second as false.
        schema.put("enum", List.of("no", false));
        return either(word("none", nothing), new WordForm<>("no", nothing, schema));
    }

    /**
     * Words that may mean either of two things, beside another form that reads all else.
     *
     * @param right what to write for each of the two
     */
    public static <T> Form<T> refused(List<String> words, String right) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("not", new LinkedHashMap<String, Object>());
        return new NarrowForm<>(
                new TextForm<>(right, schema, (text, reading) -> refuse("`" + text + "`", right)),
                words::contains);
    }

    /** One of a few words, also misspelt, beside another form that reads all else. */
    public static <T> Form<T> said(Map<String, T> byWord) {
        return new NarrowForm<>(
                choice(byWord), text -> Spelling.nearest(text, byWord.keySet()).isPresent());
    }

    /** The same form, its value turned into another. */
    public static <T, R> Form<R> map(Form<T> form, Function<T, R> change) {
        return new AdaptedForm<>(form, (value, node, reading) -> Optional.of(change.apply(value)));
    }

    /** The same form, for texts that begin with a letter; to be one of two. */
    public static <T> Form<T> name(Form<T> form) {
        return new NarrowForm<>(
                form, text -> !text.isEmpty() && Character.isLetter(text.codePointAt(0)));
    }

    /**
     * One of two forms.
     *
     * @param general reads what the other does not suit
     * @param special reads what it suits
     */
    public static <T> Form<T> either(Form<T> general, Form<T> special) {
        return EitherForm.of(general, special);
    }

    /** The same form; what is wrong with its value is told where it stands. */
    public static <T> Form<T> untroubled(Form<T> form, Function<T, Optional<Trouble>> trouble) {
        return new AdaptedForm<>(
                form,
                (value, node, reading) -> {
                    Optional<Trouble> found = trouble.apply(value);
                    found.ifPresent(t -> reading.tell(t.place(), t.found(), t.right()));
                    return found.isPresent() ? Optional.empty() : Optional.of(value);
                });
    }

    /**
     * The same form, its value checked as well.
     *
     * @param check what it must pass
     * @param right what would be right when it does not
     */
    public static <T> Form<T> checked(Form<T> form, Predicate<T> check, String right) {
        return new AdaptedForm<>(
                form,
                (value, node, reading) -> {
                    if (check.test(value)) {
                        return Optional.of(value);
                    }
                    reading.tellWrong(node, right);
                    return Optional.empty();
                });
    }

    private static <T> Parsed<T> inRange(
            Parsed<T> parsed, Function<T, Boolean> holds, String text, String words) {
        return parsed.fold(
                value -> holds.apply(value) ? parsed : refuse("`" + text + "`", words),
                refusal -> parsed);
    }

    private static <T> Parsed<T> refuse(String found, String right) {
        return new Parsed.Refusal<>(found, right);
    }
}
