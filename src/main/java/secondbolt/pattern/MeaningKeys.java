package secondbolt.pattern;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import secondbolt.file.Fields;
import secondbolt.file.Key;
import secondbolt.file.Spelling;
import secondbolt.file.form.Forms;
import secondbolt.file.form.NamedForm;
import secondbolt.file.value.Trouble;
import secondbolt.garment.Serves;
import secondbolt.pattern.piece.Piece;

/** How the maker says what an edge or a line serves. */
final class MeaningKeys {
    static final Key<Map<String, Serves>> MEANING =
            Key.optional(
                    "meaning",
                    NamedForm.of("edge or line", Forms.choice(Serves.values(), Serves::word)),
                    "What an edge or a lengthen and shorten line serves, by its name on the pieces,"
                            + " where the name is none of the trade's English words and no join"
                            + " tells it. Of an edge: "
                            + words(Serves::isOfAnEdge)
                            + ". Of a line: "
                            + words(Serves::isOfALine)
                            + ".",
                    "{Seitennaht: side, forearm: sleeve}");

    private MeaningKeys() {}

    /**
     * What is said; nothing, with the mistakes told, if a name or word does not suit the pieces.
     */
    static Optional<Map<String, Serves>> read(Fields fields, List<Piece> pieces) {
        Set<String> edges = new TreeSet<>();
        Set<String> lines = new TreeSet<>();
        for (Piece piece : pieces) {
            edges.addAll(piece.shape().edgeNames());
            lines.addAll(piece.lines().keySet());
        }
        Map<String, Serves> told = fields.get(MEANING).orElse(Map.of());
        boolean suits = true;
        for (Map.Entry<String, Serves> one : told.entrySet()) {
            suits &= suits(fields, one.getKey(), one.getValue(), edges, lines);
        }
        return suits ? Optional.of(told) : Optional.empty();
    }

    private static boolean suits(
            Fields fields, String name, Serves serves, Set<String> edges, Set<String> lines) {
        boolean isEdge = edges.contains(name);
        boolean isLine = lines.contains(name);
        if (!isEdge && !isLine) {
            isNowhere(fields, name, edges, lines);
        } else if (!(isEdge && serves.isOfAnEdge()) && !(isLine && serves.isOfALine())) {
            fields.tell(
                    fields.placeIn(MEANING, name),
                    "`"
                            + serves.word()
                            + "`, a word for "
                            + (isEdge ? "a line" : "an edge")
                            + ", for the "
                            + (isEdge ? "edge" : "line")
                            + " `"
                            + name
                            + "`",
                    isEdge
                            ? "a word for an edge: " + words(Serves::isOfAnEdge)
                            : "a word for a line: " + words(Serves::isOfALine));
        } else {
            return true;
        }
        return false;
    }

    private static void isNowhere(
            Fields fields, String name, Set<String> edges, Set<String> lines) {
        Set<String> there = new TreeSet<>(edges);
        there.addAll(lines);
        fields.tell(
                new Trouble(
                                fields.placeIn(MEANING, name),
                                "`" + name + "`, an edge or line that no piece has",
                                Spelling.nearest(name, there)
                                        .map(near -> "`" + near + "`")
                                        .orElse(
                                                "one of the pieces' edges and lines: "
                                                        + Spelling.listed(there)))
                        .ofName(name, there));
    }

    private static String words(Predicate<Serves> which) {
        return Spelling.quoted(Stream.of(Serves.values()).filter(which).map(Serves::word).toList());
    }
}
