package secondbolt.closure.fastening;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;
import secondbolt.worksheet.Convention;

/** How what a closure closes with is written. */
public final class FasteningKeys {
    private static final Key<Fastening.Kind> KIND =
            Key.optional(
                    "kind",
                    Forms.choice(Fastening.Kind.values(), Fastening.Kind::word),
                    "What it closes with; needed only where the count does not tell.",
                    "buttons");
    private static final Key<Button> BUTTON =
            Key.optional(
                            "button",
                            ButtonSection.FORM,
                            "The button, measured; the buttonhole's length follows from it.",
                            "{across: 11.5 mm, thick: 2.5 mm, shape: flat}")
                    .asking(ButtonSection.MEASURE);
    private static final Key<Length> WIDE =
            Key.optional(
                    "wide",
                    Forms.length(LengthRange.of("2 mm", "15 cm")),
                    "How wide a snap, a hook or a tie is along the placket.",
                    "9 mm");
    private static final Key<Length> EASE =
            Key.optional(
                    "working ease",
                    Forms.length(LengthRange.of("0 mm", "15 mm")),
                    "What the hole is made longer than the button needs, for thick cloth; none if"
                            + " not told. A trial hole decides.",
                    "3 mm");

    private static final Form<Fastening.Holes> WAY =
            Forms.choice(Fastening.Holes.values(), Fastening.Holes::word);
    private static final Key<Integer> NUMBER =
            Key.required("number", Forms.whole(1, 60), "Its number from the top.", "1");
    private static final Key<Fastening.Holes> HOLE =
            Key.required("hole", WAY, "Which way it runs.", "level");

    /** Which way holes run. */
    private record Ways(Fastening.Holes most, Map<Integer, Fastening.Holes> differing) {}

    private record Differs(int number, Fastening.Holes way) {}

    private static final Key<Ways> HOLES =
            Key.optional(
                            "holes",
                            Forms.either(
                                    Forms.map(WAY, way -> new Ways(way, Map.of())),
                                    Forms.map(
                                            ListForm.of(
                                                    "holes that differ",
                                                    MapForm.of(
                                                            "a hole that differs",
                                                            List.of(NUMBER, HOLE),
                                                            f ->
                                                                    Optional.of(
                                                                            new Differs(
                                                                                    f.require(
                                                                                            NUMBER),
                                                                                    f.require(
                                                                                            HOLE)))),
                                                    1,
                                                    10),
                                            FasteningKeys::differing)),
                            "Which way the holes run: upright on the centre line, or level, at right angles"
                                    + " to the edge; or a list of those that differ, such as the level one on a"
                                    + " collar stand, the others then running the other way.",
                            "upright")
                    .asking(
                            "Choose: upright on a band or a placket, level where the edge is"
                                    + " pulled, as at a waist or on a coat.");

    private FasteningKeys() {}

    /** All keys that say what a closure closes with. */
    public static List<Key<?>> keys() {
        return List.of(KIND, BUTTON, WIDE, HOLES, EASE);
    }

    private static Ways differing(List<Differs> differing) {
        Map<Integer, Fastening.Holes> ways = new LinkedHashMap<>();
        differing.forEach(one -> ways.put(one.number(), one.way()));
        boolean firstIsLevel = differing.get(0).way() == Fastening.Holes.LEVEL;
        return new Ways(firstIsLevel ? Fastening.Holes.UPRIGHT : Fastening.Holes.LEVEL, ways);
    }

    /** The kind, from its word or from what is counted. */
    public static Optional<Fastening.Kind> kind(Fields fields) {
        List<Fastening.Kind> counted = SpreadKeys.counted(fields);
        Fastening.Kind kind =
                fields.get(KIND)
                        .orElse(counted.isEmpty() ? Fastening.Kind.BUTTONS : counted.get(0));
        for (Fastening.Kind other : counted) {
            if (other != kind) {
                fields.tell(
                        SpreadKeys.count(other),
                        "`" + other.word() + "` in a closure with " + kind.word(),
                        "`" + kind.word() + "`, or a closure of its own");
                return Optional.empty();
            }
        }
        return Optional.of(kind);
    }

    /** What it closes with, unless the kind asks for keys that were not written. */
    public static Optional<Fastening> read(Fields fields, Fastening.Kind kind) {
        return kind == Fastening.Kind.BUTTONS ? buttons(fields) : others(fields, kind);
    }

    private static Optional<Fastening> buttons(Fields fields) {
        boolean whole = true;
        Optional<Button> button = button(fields);
        Optional<Ways> ways = ways(fields);
        if (button.isEmpty()) {
            fields.tell(
                    fields.place(),
                    "a closure of buttons without `button`",
                    BUTTON.line(fields.tape()) + ", measured, or `button: unknown`");
            whole = false;
        }
        if (ways.isEmpty()) {
            fields.tell(
                    fields.place(),
                    "a closure of buttons without `holes`",
                    "`holes: upright`, or `level`, or `unknown`");
            whole = false;
        }
        if (fields.get(WIDE).isPresent()) {
            fields.tell(WIDE, "`wide` for buttons", "`across` of the `button`");
            whole = false;
        }
        return whole
                ? Optional.of(
                        new Fastening(
                                Fastening.Kind.BUTTONS,
                                button,
                                Optional.empty(),
                                fields.get(EASE),
                                ways.get().most(),
                                ways.get().differing()))
                : Optional.empty();
    }

    private static Optional<Button> button(Fields fields) {
        return fields.orMeanwhile(
                BUTTON,
                ButtonSection.usual(fields.tape()),
                ButtonSection.usualWords(fields.tape()));
    }

    private static Optional<Ways> ways(Fields fields) {
        return fields.orMeanwhile(
                HOLES,
                new Ways(Fastening.Holes.UPRIGHT, Map.of()),
                "upright, as on a band (" + Convention.COMMON_PRACTICE + ")");
    }

    private static Optional<Fastening> others(Fields fields, Fastening.Kind kind) {
        boolean whole = true;
        for (Key<?> key : List.of(BUTTON, HOLES, EASE)) {
            if (fields.get(key).isPresent()) {
                fields.tell(
                        key,
                        "`" + key.name() + "` in a closure with " + kind.word(),
                        "nothing: only buttons have holes");
                whole = false;
            }
        }
        return whole
                ? Optional.of(
                        new Fastening(
                                kind,
                                Optional.empty(),
                                fields.get(WIDE),
                                Optional.empty(),
                                Fastening.Holes.LEVEL,
                                Map.of()))
                : Optional.empty();
    }
}
