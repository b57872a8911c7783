package secondbolt.file.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import secondbolt.file.Form;
import secondbolt.file.Reading;
import secondbolt.file.source.Node;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * A length in a range; a bare number is on the file's tape.
 *
 * @param range the lengths it takes
 * @param why goes on after the range: why the length must be known; empty if it need not be
 */
record LengthForm(LengthRange range, String why) implements Form<Length> {
    /** What holds no unit, on whatever tape it is. */
    private static final Pattern BARE = Pattern.compile("[\\d.,/\\s½¼¾⅓⅔⅛⅜⅝⅞-]*+");

    /** No metric tape has quarters, eighths or sixteenths; half a centimetre is often said. */
    private static final Pattern INCH_FRACTION =
            Pattern.compile("(\\d++[\\s-]++)?\\d++\\s?/\\s?(4|8|16|32)|\\d*+\\s?[¼¾⅛⅜⅝⅞]");

    /** Whether a text is a number without a unit. */
    static boolean isBare(String text) {
        return BARE.matcher(text).matches();
    }

    /** Longer is no length, whatever it is. */
    private static final int LONGEST = 100;

    private static boolean isFigure(int letter) {
        return Character.isDigit(letter) || Character.getType(letter) == Character.OTHER_NUMBER;
    }

    @Override
    public Optional<Length> read(Node node, Reading reading) {
        Optional<String> text = node.asText().map(Node.Text::text).filter(t -> !t.isEmpty());
        if (text.isEmpty()) {
            reading.tellKind(node, this);
            return Optional.empty();
        }
        return read(text.get(), node, reading);
    }

    private Optional<Length> read(String text, Node node, Reading reading) {
        Tape tape = reading.tape();
        if (text.length() > LONGEST || text.codePoints().noneMatch(LengthForm::isFigure)) {
            reading.tellKind(node, this);
            return Optional.empty();
        }
        if (tape == Tape.CENTIMETRE
                && reading.isTapeTold()
                && INCH_FRACTION.matcher(text).matches()) {
            reading.tell(
                    node.place(),
                    "`" + text + "`, a fraction of the inch tape in a file in cm",
                    "`" + text + " in`, or `" + text + " cm` if that is meant");
            return Optional.empty();
        }
        return Length.parse(text, tape)
                .fold(
                        length -> inRange(length, text, node, reading),
                        refusal -> {
                            reading.tell(node.place(), refusal.found(), refusal.right());
                            return Optional.empty();
                        });
    }

    private Optional<Length> inRange(Length length, String text, Node node, Reading reading) {
        if (range.holds(length)) {
            return Optional.of(length);
        }
        Tape other = reading.tape().other();
        boolean isOther = isBare(text) && range.holds(text, other);
        String meant = isOther ? "; or `" + text + " " + other.symbol() + "` if that is meant" : "";
        reading.tell(node.place(), "`" + text + "`", words(reading.tape()) + meant);
        return Optional.empty();
    }

    @Override
    public boolean suits(Node node) {
        return node.asText().isPresent();
    }

    @Override
    public boolean mayBeNone() {
        return true;
    }

    @Override
    public String words() {
        return "a length of " + range.words() + why;
    }

    @Override
    public String words(Tape tape) {
        return "a length of " + range.words(tape) + why;
    }

    /** A bare number may be in centimetres or in inches: what is neither is refused. */
    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", List.of("string", "number"));
        schema.put("minimum", bound(range.shortest(), Tape.INCH));
        schema.put("maximum", bound(range.longest(), Tape.CENTIMETRE));
        String sign = range.shortest().isNegative() ? "[+−–-]?" : "[+]?";
        schema.put("pattern", "^\\s*" + sign + "\\s*[0-9.,½¼¾⅓⅔⅛⅜⅝⅞⁰¹²³⁴⁵⁶⁷⁸⁹]");
        return schema;
    }

    private static double bound(Length end, Tape tape) {
        return end.millimetres() / (tape == Tape.INCH ? 25.4 : 10);
    }
}
