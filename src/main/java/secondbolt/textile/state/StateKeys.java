package secondbolt.textile.state;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;

/** The keys that say in what state a cloth came. */
public final class StateKeys {
    /** What came with it. */
    public static final Key<List<CameWith>> CAME_WITH =
            Key.optional(
                            "came with",
                            some("what it came with", CameWith.values(), CameWith::word),
                            "What it came with that must be dealt with before it is cut, or"
                                    + " `none`: moths, mildew, old seams, softener, camphor.",
                            "[moths, old seams]")
                    .asking(
                            "Hold it to the light and look into folds and seams for holes, webs,"
                                    + " spots and stitching, and smell it; write `came with: none` if"
                                    + " there is nothing.");

    /** What of it is dealt with; never taken over from a cloth it is like. */
    public static final Key<List<CameWith>> RID_OF =
            Key.optional(
                            "rid of",
                            some("what it is rid of", CameWith.values(), CameWith::word),
                            "What it came with and is rid of: frozen, dried and brushed, unpicked,"
                                    + " washed out or aired. Never taken over from a cloth it is"
                                    + " like.",
                            "[moths]")
                    .asking("Ask who had it before, or do it once more.");

    private static final Key<List<Finish>> FINISH =
            Key.optional(
                            "finish",
                            some("finishes", Finish.values(), Finish::word),
                            "What was put on it, or `none`: easy-care, flame-retardant,"
                                    + " water-repellent, starch.",
                            "[easy-care]")
                    .asking(
                            "Look for words such as no-iron on its label; drop water on a corner:"
                                    + " what beads is finished to repel it; crush it in your hand:"
                                    + " cotton that springs back without creases is likely"
                                    + " easy-care.");

    private static final Key<CareLabel.Wash> WASH =
            Key.optional(
                    "wash",
                    Forms.either(
                            Forms.either(tub(), Forms.said(hand())),
                            Forms.none(CareLabel.Wash.NOT)),
                    "The figure in its tub, in °C: 30, 40, 50, 60, 70 or 95; `by hand` for a hand"
                            + " in it; `none` for a crossed one.",
                    "40");
    private static final Key<CareLabel.Iron> IRON =
            Key.optional(
                    "iron",
                    Forms.either(
                            Forms.map(Forms.whole(1, 3), CareLabel.Iron::new),
                            Forms.none(CareLabel.Iron.NOT)),
                    "The dots in its iron, 1 to 3; `none` for a crossed one.",
                    "2");
    private static final Key<CareLabel> CARE_LABEL =
            Key.optional(
                            "care label",
                            Forms.either(
                                    MapForm.of(
                                            "a care label",
                                            List.of(WASH, IRON),
                                            fields ->
                                                    Optional.of(
                                                            new CareLabel(
                                                                    fields.get(WASH),
                                                                    fields.get(IRON)))),
                                    Forms.none(CareLabel.UNTOLD)),
                            "What its own care label says; it comes before any advice by its fibre."
                                    + " `none` if it has no label.",
                            "{wash: 40, iron: 2}")
                    .asking("Look into its seams; write `care label: none` if there is none.");

    /** All of them, in the order of the reference. */
    public static final List<Key<?>> KEYS = List.of(CAME_WITH, RID_OF, FINISH, CARE_LABEL);

    private StateKeys() {}

    /** A list of words, one alone, or none. */
    private static <T> Form<List<T>> some(String what, T[] values, Function<T, String> word) {
        Map<String, List<T>> alone = new LinkedHashMap<>();
        Arrays.stream(values).forEach(value -> alone.put(word.apply(value), List.of(value)));
        Form<List<T>> list = ListForm.of(what, Forms.choice(values, word), 0, values.length);
        return Forms.either(Forms.either(list, Forms.said(alone)), Forms.none(List.<T>of()));
    }

    private static Form<CareLabel.Wash> tub() {
        return Forms.map(
                Forms.checked(
                        Forms.whole(30, 95),
                        celsius -> Set.of(30, 40, 50, 60, 70, 95).contains(celsius),
                        "30, 40, 50, 60, 70 or 95, as in the tub of its label"),
                celsius -> new CareLabel.Wash(celsius, false));
    }

    private static Map<String, CareLabel.Wash> hand() {
        Map<String, CareLabel.Wash> words = new LinkedHashMap<>();
        words.put("by hand", CareLabel.Wash.BY_HAND);
        return words;
    }

    /** What is written; nothing, with the mistake told, if it is rid of what never came with it. */
    public static Optional<State> read(Fields fields) {
        Set<CameWith> came = new LinkedHashSet<>(fields.get(CAME_WITH).orElse(List.of()));
        Set<CameWith> rid = new LinkedHashSet<>(fields.get(RID_OF).orElse(List.of()));
        List<CameWith> never = rid.stream().filter(thing -> !came.contains(thing)).toList();
        if (!never.isEmpty()) {
            fields.tell(
                    RID_OF,
                    "a cloth rid of " + words(never) + ", which it did not come with",
                    "`came with: ["
                            + words(Stream.concat(came.stream(), never.stream()).toList())
                            + "]`");
        }
        return !never.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new State(
                                came,
                                rid,
                                new LinkedHashSet<>(fields.get(FINISH).orElse(List.of())),
                                fields.get(CARE_LABEL).orElse(CareLabel.UNTOLD)));
    }

    private static String words(List<CameWith> things) {
        return things.stream().map(CameWith::word).collect(Collectors.joining(", "));
    }
}
