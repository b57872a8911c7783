package secondbolt.hem;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Forms;
import secondbolt.file.Key;
import secondbolt.file.LengthRange;
import secondbolt.file.ListForm;
import secondbolt.file.MapForm;
import secondbolt.file.NamedForm;
import secondbolt.file.Placed;
import secondbolt.measure.Length;

/** The {@code hems} section of the project file: its keys, and how they are read. */
public final class HemSection {
    private static final Pattern EDGE = Pattern.compile("([^.]+)\\.([^.]+)");

    private static final Key<List<Placed<Hem.Edge>>> ON =
            Key.required(
                    "on",
                    ListForm.of(
                            "edges",
                            Forms.placed(
                                    Forms.parsed(
                                            "an edge of a piece, such as front.hem",
                                            HemSection::edge)),
                            1,
                            60),
                    "The edges that are turned up; the hem alone sets their allowance.",
                    "[front.hem, back.hem]");
    private static final Key<Length> DEPTH =
            Key.optional(
                    "depth",
                    Forms.length(LengthRange.of("2 mm", "30 cm")),
                    "How deep the finished hem is; needed unless it is faced.",
                    "2");
    private static final Key<Hem.Turned> TURNED =
            Key.required(
                    "turned",
                    Forms.choice(Hem.Turned.values(), Hem.Turned::word),
                    "Once with a flat finished edge; twice with its raw edge turned under; narrow,"
                            + " turned two times by its depth; or faced.",
                    "twice");

    /** The section: hems under names of the maker's own. */
    public static final Key<Map<String, Hem>> KEY =
            Key.optional(
                    "hems",
                    NamedForm.of("hem", form()),
                    "Depth and turns of each hem, under a name of your own.",
                    "{hem: {on: [front.hem, back.hem], depth: 2, turned: twice}}");

    private HemSection() {}

    private static Form<Hem> form() {
        return MapForm.of("a hem", List.of(ON, DEPTH, TURNED), HemSection::hem);
    }

    private static Optional<Hem.Edge> edge(String text) {
        Matcher edge = EDGE.matcher(text);
        return edge.matches()
                ? Optional.of(new Hem.Edge(edge.group(1).strip(), edge.group(2).strip()))
                : Optional.empty();
    }

    private static Optional<Hem> hem(Fields fields) {
        Hem.Turned turned = fields.require(TURNED);
        Optional<Length> depth = fields.get(DEPTH);
        if (depth.isEmpty() && turned != Hem.Turned.FACED) {
            fields.tell(
                    fields.place(),
                    "a hem turned " + turned.word() + " without `depth`",
                    "`depth: 2`, from the fold to where it is sewn");
            return Optional.empty();
        }
        return Optional.of(new Hem(fields.require(ON), depth, turned));
    }
}
