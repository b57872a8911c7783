package secondbolt.closure.placket;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.closure.fastening.FastenerSpread;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.fastening.FasteningKeys;
import secondbolt.closure.fastening.FasteningRules;
import secondbolt.closure.fastening.Overlap;
import secondbolt.closure.fastening.OverlapKeys;
import secondbolt.closure.fastening.SpreadKeys;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.source.Place;
import secondbolt.file.value.Answer;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Placed;
import secondbolt.file.value.Trouble;
import secondbolt.measure.Length;
import secondbolt.pattern.EdgeSum;

/** The {@code closures} section of the project file: its keys, and how they are read. */
public final class ClosureSection {
    private static final Key<Answer<Length>> LENGTH =
            Key.optional(
                    "length",
                    Forms.orUnknown(Forms.length(LengthRange.of("1 cm", "3 m"))),
                    "The placket by tape, from its finished top edge to its finished bottom edge,"
                            + " after all alterations; or `on` instead.",
                    "65");
    private static final Key<Placed<EdgeSum>> ON =
            Key.optional(
                    "on",
                    EdgeSum.ROW,
                    "The edge it lies on, or several one below the other, so that its length"
                            + " follows the alterations.",
                    "front.centre front");

    private static final Form<Closure> FORM =
            MapForm.of("a closure", keys(), ClosureSection::closure).with(FasteningRules.all());

    /** The section: closures under names of the maker's own. */
    public static final Key<Map<String, Closure>> KEY =
            Key.optional(
                    "closures",
                    NamedForm.of("closure", FORM),
                    "What the garment closes with, each under a name of your own.",
                    "{front band: {length: 65, extension: 1.8, kind: buttons, buttons: 7, button:"
                            + " {across: 11.5 mm, thick: 2.5 mm}, first: 2, last: 11, holes: upright,"
                            + " laps: right over left}}");

    private ClosureSection() {}

    private static List<Key<?>> keys() {
        List<Key<?>> keys = new ArrayList<>(List.of(LENGTH, ON));
        keys.addAll(FasteningKeys.keys());
        keys.addAll(SpreadKeys.keys());
        keys.addAll(OverlapKeys.keys());
        return keys;
    }

    private static Optional<Closure> closure(Fields fields) {
        Optional<Fastening.Kind> kind = FasteningKeys.kind(fields);
        if (!hasOneLength(fields) || kind.isEmpty()) {
            return Optional.empty();
        }
        Optional<FastenerSpread> spread = SpreadKeys.read(fields, kind.get());
        Optional<Fastening> fastening = FasteningKeys.read(fields, kind.get());
        Optional<Overlap> overlap = OverlapKeys.read(fields, kind.get());
        if (spread.isEmpty() || fastening.isEmpty() || overlap.isEmpty()) {
            return Optional.empty();
        }
        Closure closure =
                new Closure(
                        placket(fields),
                        fastening.get(),
                        spread.get(),
                        overlap.get(),
                        places(fields, kind.get()),
                        fields.leftOpen());
        List<Trouble> troubles =
                closure.placket().edges().isPresent()
                        ? List.of()
                        : ClosureCheck.of(closure, Optional.empty(), fields.tape());
        troubles.forEach(t -> fields.tell(t.place(), t.found(), t.right()));
        return troubles.isEmpty() ? Optional.of(closure) : Optional.empty();
    }

    private static boolean hasOneLength(Fields fields) {
        if (fields.isOpen(ON) || fields.get(LENGTH).isPresent() != fields.get(ON).isPresent()) {
            return true;
        }
        fields.tell(
                fields.place(),
                fields.get(ON).isPresent()
                        ? "both `length` and `on`"
                        : "a closure without `length`",
                "one of "
                        + LENGTH.line(fields.tape())
                        + ", by tape, or `on: front.centre front`, an edge of the"
                        + " pattern");
        return false;
    }

    private static Closure.Places places(Fields fields, Fastening.Kind kind) {
        boolean isCounted = fields.get(SpreadKeys.count(kind)).isPresent();
        Place count = fields.place(isCounted ? SpreadKeys.count(kind) : SpreadKeys.LARGEST);
        return new Closure.Places(
                count, fields.place(SpreadKeys.FIRST), fields.place(SpreadKeys.LAST));
    }

    private static Placket placket(Fields fields) {
        return fields.get(ON)
                .<Placket>map(on -> new Placket.OnEdges(on, List.of()))
                .orElseGet(() -> new Placket.ByTape(fields.get(LENGTH).orElseGet(Answer::unknown)));
    }
}
