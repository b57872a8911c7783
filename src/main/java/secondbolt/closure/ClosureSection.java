package secondbolt.closure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Answer;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Forms;
import secondbolt.file.Key;
import secondbolt.file.LengthRange;
import secondbolt.file.MapForm;
import secondbolt.file.NamedForm;
import secondbolt.file.Placed;
import secondbolt.fit.EdgeSum;
import secondbolt.fit.FitCheck;
import secondbolt.measure.Length;

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
                    "The edge it lies on, or several one below the other, so that its length follows"
                            + " the alterations.",
                    "front.centre front");
    private static final Key<Length> EXTENSION =
            Key.required(
                    "extension",
                    Forms.length(LengthRange.of("0 mm", "20 cm")),
                    "From the centre line to the finished edge.",
                    "1.8");
    private static final Key<String> KIND =
            Key.optional("kind", kinds(), "What it closes with; buttons if not told.", "buttons");
    private static final Key<Integer> BUTTONS =
            Key.required("buttons", Forms.whole(1, 60), "How many buttons.", "7");
    private static final Key<Button> BUTTON =
            Key.required(
                    "button",
                    ButtonSection.FORM,
                    "The button, measured; the buttonhole's length follows from it.",
                    "{across: 11.5 mm, thick: 2.5 mm, shape: flat}");
    private static final Key<Length> FIRST =
            Key.required(
                    "first",
                    Forms.length(LengthRange.of("0 mm", "3 m")),
                    "From the top edge to the centre of the first button.",
                    "1");
    private static final Key<Length> LAST =
            Key.optional(
                    "last",
                    Forms.length(LengthRange.of("0 mm", "3 m")),
                    "From the bottom edge to the centre of the last button; needed unless there is"
                            + " but one.",
                    "11");
    private static final Key<Closure.Holes> HOLES =
            Key.required(
                    "holes",
                    Forms.choice(Closure.Holes.values(), Closure.Holes::word),
                    "Which way the holes run: upright on the centre line, or level, at right angles"
                            + " to the edge.",
                    "upright");
    private static final Key<Closure.Laps> LAPS =
            Key.required(
                    "laps",
                    Forms.choice(Closure.Laps.values(), Closure.Laps::word),
                    "Which front lies over, from the wearer's side; it has the holes.",
                    "right over left");
    private static final Key<Length> EASE =
            Key.optional(
                    "working ease",
                    Forms.length(LengthRange.of("0 mm", "15 mm")),
                    "What the hole is made longer than the button needs, for thick cloth; none if"
                            + " not told. A trial hole decides.",
                    "3 mm");

    private static final Form<Closure> FORM =
            MapForm.of(
                    "a closure",
                    List.of(
                            LENGTH,
                            ON,
                            EXTENSION,
                            KIND,
                            BUTTONS,
                            BUTTON,
                            FIRST,
                            LAST,
                            HOLES,
                            LAPS,
                            EASE,
                            Key.later("largest gap", "The widest gap allowed between two buttons."),
                            Key.later("meet", "Places where a button must fall."),
                            Key.later("bulk", "Places where no hole can be stitched.")),
                    ClosureSection::closure);

    /** The section: closures under names of the maker's own. */
    public static final Key<Map<String, Closure>> KEY =
            Key.optional(
                    "closures",
                    NamedForm.of("closure", FORM),
                    "What the garment closes with, each under a name of your own.",
                    "{front band: {length: 65, …}}");

    private ClosureSection() {}

    private static Form<String> kinds() {
        Map<String, String> kinds = new LinkedHashMap<>();
        for (String kind : List.of("buttons", "snaps", "hooks", "ties")) {
            kinds.put(kind, kind);
        }
        return Forms.choice(kinds);
    }

    private static Optional<Closure> closure(Fields fields) {
        if (fields.get(LENGTH).isPresent() == fields.get(ON).isPresent()) {
            fields.tell(
                    fields.place(),
                    fields.get(ON).isPresent()
                            ? "both `length` and `on`"
                            : "a closure without `length`",
                    "one of `length: 65`, by tape, or `on: front.centre front`, an edge of the pattern");
            return Optional.empty();
        }
        Closure closure =
                new Closure(
                        placket(fields),
                        fields.require(EXTENSION),
                        fields.require(BUTTONS),
                        fields.require(BUTTON),
                        fields.require(FIRST),
                        fields.get(LAST),
                        fields.require(HOLES),
                        fields.require(LAPS),
                        fields.get(EASE),
                        new Closure.Places(
                                fields.place(BUTTONS), fields.place(FIRST), fields.place(LAST)));
        if (!kindIsWorkedOut(fields) || !lastIsTold(closure, fields)) {
            return Optional.empty();
        }
        List<FitCheck.Trouble> troubles =
                closure.placket().edges().isPresent()
                        ? List.of()
                        : ClosureCheck.of(closure, closure.placket().length(Optional.empty()));
        troubles.forEach(t -> fields.tell(t.place(), t.found(), t.right()));
        return troubles.isEmpty() ? Optional.of(closure) : Optional.empty();
    }

    private static Placket placket(Fields fields) {
        return fields.get(ON)
                .<Placket>map(Placket.OnEdges::new)
                .orElseGet(() -> new Placket.ByTape(fields.require(LENGTH)));
    }

    private static boolean kindIsWorkedOut(Fields fields) {
        Optional<String> told = fields.get(KIND).filter(k -> !k.equals("buttons"));
        told.ifPresent(
                k ->
                        fields.tell(
                                KIND,
                                "`" + k + "`, which this version does not work out yet",
                                "`buttons`"));
        return told.isEmpty();
    }

    private static boolean lastIsTold(Closure closure, Fields fields) {
        if (closure.buttons() > 1 && closure.last().isEmpty()) {
            fields.tell(
                    fields.place(),
                    "a closure of " + closure.buttons() + " buttons without `last`",
                    "`last: 11`, from the bottom edge to the centre of the last button");
            return false;
        }
        return true;
    }
}
