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
import secondbolt.file.value.Placed;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Convention;

/** How the count of a closure and its places are written. */
public final class SpreadKeys {
    private static final LengthRange ALONG = LengthRange.of("0 mm", "3 m");
    private static final int MOST_SPOTS = 8;

    private static final Map<Fastening.Kind, Key<Integer>> COUNTS = counts();

    public static final Key<Length> LARGEST =
            Key.optional(
                    "largest gap",
                    Forms.length(LengthRange.of("5 mm", "1 m")),
                    "The widest gap allowed from one to the next; as many more are taken as it"
                            + " needs.",
                    "9");
    private static final Key<List<Length>> BETWEEN =
            Key.required(
                    "between",
                    Forms.checked(
                            ListForm.of("the shortest and the longest", Forms.length(ALONG), 2, 2),
                            ends -> !ends.get(0).isLongerThan(ends.get(1)),
                            "the shorter first"),
                    "The shortest and the longest it may be.",
                    "[1, 2]");
    private static final Form<FastenerSpread.EndRange> REACH =
            Forms.either(
                    Forms.map(Forms.length(ALONG), FastenerSpread.EndRange::of),
                    MapForm.of(
                            "a range",
                            List.of(BETWEEN),
                            fields ->
                                    Optional.of(
                                            new FastenerSpread.EndRange(
                                                    fields.require(BETWEEN).get(0),
                                                    fields.require(BETWEEN).get(1)))));
    public static final Key<FastenerSpread.EndRange> FIRST =
            Key.required(
                            "first",
                            REACH,
                            "From the top edge to the centre of the first, or `{between: [1, 2]}`.",
                            "1")
                    .asking(
                            "Pin the band closed on the wearer and mark where the uppermost has to"
                                    + " hold; then measure from the finished top edge.");
    public static final Key<FastenerSpread.EndRange> LAST =
            Key.optional(
                            "last",
                            REACH,
                            "From the bottom edge to the centre of the last, or `{between: [10, 12]}`;"
                                    + " needed unless there is but one.",
                            "11")
                    .asking(
                            "Pin the band closed on the wearer, sit down in it and mark the lowest"
                                    + " that has to hold; then measure from the finished bottom"
                                    + " edge.");

    private static final Key<Placed<FastenerSpread.At>> AT =
            Key.required(
                    "at",
                    Forms.placed(
                            Forms.either(
                                    Forms.map(
                                            Forms.length(ALONG),
                                            at ->
                                                    new FastenerSpread.At(
                                                            Optional.of(at), Optional.empty())),
                                    Forms.name(
                                            Forms.parsed(
                                                    "a mark such as `front.bust point`",
                                                    SpreadKeys::mark)))),
                    "From the top as the pattern prints it, or the mark of a piece it is level"
                            + " with; the alterations carry it.",
                    "front.bust point");
    private static final Key<String> WHY =
            Key.optional("why", Forms.text(60), "What is there.", "fullest bust");
    private static final Key<Length> CLEAR =
            Key.optional(
                    "clear",
                    Forms.length(LengthRange.of("0 mm", "20 cm")),
                    "What stays free of a hole on both sides of it.",
                    "1");
    private static final Key<List<FastenerSpread.WrittenSpot>> MEET =
            Key.optional(
                    "meet",
                    ListForm.of(
                            "places",
                            MapForm.of(
                                    "a place", List.of(AT, WHY), f -> spot(f, "a place to meet")),
                            0,
                            MOST_SPOTS),
                    "Places where one must come.",
                    "[{at: front.bust point, why: fullest bust}]");
    private static final Key<List<FastenerSpread.WrittenSpot>> BULK =
            Key.optional(
                    "bulk",
                    ListForm.of(
                            "places",
                            MapForm.of("a place", List.of(AT, WHY, CLEAR), f -> spot(f, "bulk")),
                            0,
                            MOST_SPOTS),
                    "Places where no hole can be stitched; the seams between the edges of `on` are"
                            + " such places by themselves.",
                    "[{at: 38, why: pocket seam, clear: 1}]");

    /** The nearest that a fastener stands to an edge. */
    private static final Convention USUAL_LEAST =
            Convention.common(Length.ofInches(1, 2), Length.ofMillimetres(12));

    private static final Convention USUAL_FIRST =
            Convention.common(Length.ofInches(1, 1), Length.ofMillimetres(25));
    private static final Convention USUAL_LAST =
            Convention.common(Length.ofInches(4, 1), Length.ofMillimetres(100));
    private static final Convention USUAL_GAP =
            Convention.common(Length.ofInches(7, 2), Length.ofMillimetres(90));

    private SpreadKeys() {}

    /** All keys that say how many there are and how they are spread. */
    public static List<Key<?>> keys() {
        return List.of(
                COUNTS.get(Fastening.Kind.BUTTONS),
                COUNTS.get(Fastening.Kind.SNAPS),
                COUNTS.get(Fastening.Kind.HOOKS),
                COUNTS.get(Fastening.Kind.TIES),
                LARGEST,
                FIRST,
                LAST,
                MEET,
                BULK);
    }

    private static Map<Fastening.Kind, Key<Integer>> counts() {
        Map<Fastening.Kind, Key<Integer>> counts = new LinkedHashMap<>();
        for (Fastening.Kind kind : Fastening.Kind.values()) {
            counts.put(
                    kind,
                    Key.<Integer>optional(
                                    kind.word(),
                                    Forms.whole(1, FastenerSpread.MOST),
                                    "How many "
                                            + kind.word()
                                            + ", if it closes with them; or `largest gap`, or both.",
                                    kind == Fastening.Kind.BUTTONS ? "7" : "4")
                            .asking(
                                    "Count those that you have. How other counts would come out"
                                            + " stands on the page of the closure."));
        }
        return counts;
    }

    /** The key that counts fasteners of a kind. */
    public static Key<Integer> count(Fastening.Kind kind) {
        return COUNTS.get(kind);
    }

    /** The kinds whose count is told. */
    static List<Fastening.Kind> counted(Fields fields) {
        return COUNTS.keySet().stream()
                .filter(k -> fields.get(count(k)).isPresent() || fields.isOpen(count(k)))
                .toList();
    }

    private static Optional<FastenerSpread.At> mark(String text) {
        return PieceEdge.parse(text)
                .map(mark -> new FastenerSpread.At(Optional.empty(), Optional.of(mark)));
    }

    private static Optional<FastenerSpread.WrittenSpot> spot(Fields fields, String what) {
        Placed<FastenerSpread.At> at = fields.require(AT);
        String named = at.value().mark().map(PieceEdge::edge).orElse(what);
        return Optional.of(
                new FastenerSpread.WrittenSpot(
                        at,
                        fields.get(WHY).orElse(named),
                        fields.get(CLEAR).orElse(FastenerSpread.USUAL_CLEAR.on(fields.tape()))));
    }

    /** The largest gap; where no count is known either, the usual one. */
    private static Optional<Length> largest(Fields fields, Fastening.Kind kind) {
        boolean isCounted = fields.get(count(kind)).isPresent();
        Key<?> open = fields.isOpen(LARGEST) ? LARGEST : count(kind);
        if (isCounted || fields.get(LARGEST).isPresent() || !fields.isOpen(open)) {
            return fields.get(LARGEST);
        }
        Length usual = USUAL_GAP.on(fields.tape());
        return fields.meanwhile(
                open,
                usual,
                "as many as leave no gap above "
                        + fields.tape().print(usual)
                        + " ("
                        + USUAL_GAP.source()
                        + ")");
    }

    private static Optional<FastenerSpread.EndRange> end(
            Fields fields, Key<FastenerSpread.EndRange> key, Convention most) {
        Tape tape = fields.tape();
        Length least = USUAL_LEAST.on(tape);
        return fields.orMeanwhile(
                key,
                new FastenerSpread.EndRange(least, most.on(tape)),
                "where it suits the others best, from "
                        + tape.print(least)
                        + " to "
                        + tape.print(most.on(tape))
                        + " ("
                        + most.source()
                        + ")");
    }

    /** The spread of so many; nothing, and a mistake told, if something is missing. */
    public static Optional<FastenerSpread> read(Fields fields, Fastening.Kind kind) {
        Optional<Integer> count = fields.get(count(kind));
        Optional<Length> largest = largest(fields, kind);
        if (count.isEmpty() && largest.isEmpty()) {
            fields.tell(
                    fields.place(),
                    "a closure without a count",
                    count(kind).line(fields.tape()) + ", or " + LARGEST.line(fields.tape()));
            return Optional.empty();
        }
        boolean isOne = count.filter(n -> n == 1).isPresent() && largest.isEmpty();
        if (!isOne && fields.get(LAST).isEmpty() && !fields.isOpen(LAST)) {
            fields.tell(
                    fields.place(),
                    "a closure of "
                            + count.map(Object::toString).orElse("several")
                            + " "
                            + kind.word()
                            + " without `last`",
                    LAST.line(fields.tape())
                            + ", from the bottom edge to the centre of the last "
                            + kind.one());
            return Optional.empty();
        }
        return Optional.of(
                new FastenerSpread(
                        count,
                        largest,
                        end(fields, FIRST, USUAL_FIRST).orElseThrow(),
                        isOne ? fields.get(LAST) : end(fields, LAST, USUAL_LAST),
                        fields.get(MEET).orElse(List.of()),
                        fields.get(BULK).orElse(List.of())));
    }
}
