package secondbolt.hem.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Rule;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.LengthRange;
import secondbolt.file.value.Placed;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.worksheet.Convention;

/** The {@code hems} section of the project file: its keys, and how they are read. */
public final class HemSection {
    private static final Pattern HOURS = Pattern.compile("(\\d{1,3}) ?h");
    private static final int MOST_HOURS = 336;

    private static final Key<List<Placed<PieceEdge>>> ON =
            Key.required(
                    "on",
                    ListForm.of(
                            "edges",
                            Forms.placed(PieceEdge.form("an edge of a piece, such as front.hem")),
                            1,
                            60),
                    "The edges that are turned up; the hem alone sets their allowance.",
                    "[front.hem, back.hem]");
    private static final Key<Length> DEPTH =
            Key.optional(
                            "depth",
                            Forms.length(
                                    LengthRange.of("2 mm", "30 cm"),
                                    ", which the cutting line follows"),
                            "How deep the finished hem is, from the fold to where it is sewn; of a faced"
                                    + " one how deep the facing is. Needed unless it is faced.",
                            "2")
                    .asking(
                            "Pin the hem up on the wearer at two depths, look at how it falls, and"
                                    + " measure the one she likes; or look up what is usual for the"
                                    + " garment.");
    private static final Key<Hem.Turned> TURNED =
            Key.required(
                            "turned",
                            Forms.choice(Hem.Turned.values(), Hem.Turned::word),
                            "Once with a flat finished edge; blind, the same with stitches that do not show"
                                    + " outside; twice with its raw edge turned under; narrow, turned two"
                                    + " times by its depth; or faced.",
                            "twice")
                    .asking(
                            "Try it on a scrap of the cloth: once is flattest, twice is strongest.");
    private static final Key<Garment> FOR =
            Key.optional(
                    "for",
                    Forms.choice(Garment.values(), Garment::word),
                    "What it is the hem of: the depths usual for it are told beside yours.",
                    "skirt");
    private static final Key<Length> FROM_FLOOR =
            Key.optional(
                    "from floor",
                    Forms.length(LengthRange.of("5 mm", "1.5 m")),
                    "How high above the floor its fold stands when worn; a strip to level it with"
                            + " is printed.",
                    "48");
    private static final Key<Integer> HANGS_FOR =
            Key.required(
                    "for",
                    Forms.parsed(
                            "hours, from 1 h to " + MOST_HOURS + " h, such as 24 h",
                            HemSection::hours),
                    "How long it hangs, in hours.",
                    "24 h");
    private static final Key<Hem.Hang> HANG =
            Key.optional(
                    "hang",
                    Forms.either(
                            Forms.map(
                                    Forms.yesOrNo(), yes -> yes ? Hem.Hang.BY_CLOTH : Hem.Hang.NOT),
                            MapForm.of(
                                    "a time to hang",
                                    List.of(HANGS_FOR),
                                    f -> Optional.of(Hem.Hang.told(f.require(HANGS_FOR))))),
                    "Whether it hangs out before it is levelled, a day to three; if not told, a"
                            + " piece on the bias or a hem that goes round a quarter circle or more"
                            + " does.",
                    "{for: 24 h}");
    private static final Key<Length> JUMP =
            Key.optional(
                    "jump",
                    Forms.length(LengthRange.of("2 mm", "10 cm")),
                    "Of a lining's hem that is sewn to the garment's: how far its fold stands above"
                            + " the garment's. So much of its length falls in a pleat.",
                    "2.5");

    /** The section: hems under names of the maker's own. */
    public static final Key<Map<String, Hem>> KEY =
            Key.optional(
                    "hems",
                    NamedForm.of("hem", form()),
                    "Depth and turns of each hem, under a name of your own.",
                    "{hem: {on: [front.hem, back.hem], depth: 2, turned: twice}}");

    /** The deepest that is common on clothes of which nothing is told: what is cut can be less. */
    private static final Convention DEEP =
            Convention.common(Length.ofInches(2, 1), Length.ofMillimetres(50));

    private static final Convention NARROW =
            Convention.common(Length.ofInches(1, 4), Length.ofMillimetres(6));

    private HemSection() {}

    private static Form<Hem> form() {
        return MapForm.of(
                        "a hem",
                        List.of(ON, DEPTH, TURNED, FOR, FROM_FLOOR, HANG, JUMP),
                        HemSection::hem)
                .with(Rule.any(Rule.has("depth"), Rule.is("turned", "faced")));
    }

    private static Optional<Integer> hours(String text) {
        Matcher hours = HOURS.matcher(text);
        return Optional.of(hours)
                .filter(Matcher::matches)
                .map(h -> Integer.parseInt(h.group(1)))
                .filter(h -> h >= 1 && h <= MOST_HOURS);
    }

    private static Optional<Placed<Length>> depth(Fields fields, Hem.Turned turned) {
        Optional<Convention> usual =
                fields.get(FOR).stream()
                        .flatMap(garment -> garment.usual().stream())
                        .map(Garment.Usual::most)
                        .max(Comparator.comparing(most -> most.on(fields.tape())));
        boolean isNarrow = turned == Hem.Turned.NARROW;
        Convention most = isNarrow ? NARROW : usual.orElse(DEEP);
        Length deep = most.on(fields.tape());
        String source =
                isNarrow || usual.isEmpty()
                        ? most.source()
                        : "the deepest that is usual, " + most.source();
        return fields.orMeanwhile(DEPTH, deep, fields.tape().print(deep) + " (" + source + ")")
                .map(length -> new Placed<>(length, fields.place(DEPTH)));
    }

    private static Optional<Hem> hem(Fields fields) {
        Hem.Turned turned =
                fields.orMeanwhile(
                                TURNED,
                                Hem.Turned.TWICE,
                                "twice, which takes the most cloth (common practice, no source)")
                        .orElseThrow();
        Optional<Placed<Length>> depth =
                turned == Hem.Turned.FACED ? fields.getPlaced(DEPTH) : depth(fields, turned);
        if (depth.isEmpty() && turned != Hem.Turned.FACED) {
            fields.tell(
                    fields.place(),
                    "a hem turned " + turned.word() + " without `depth`",
                    DEPTH.line(fields.tape()) + ", from the fold to where it is sewn");
            return Optional.empty();
        }
        return Optional.of(
                new Hem(
                        fields.require(ON),
                        depth,
                        turned,
                        fields.get(FOR),
                        fields.get(FROM_FLOOR),
                        fields.get(HANG),
                        fields.getPlaced(JUMP),
                        fields.leftOpen()));
    }
}
