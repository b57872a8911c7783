package secondbolt.file.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.parser.Parser;

/**
 * Builds nodes from the events of a YAML parser, and tells what is legal YAML but a trap here:
 * anchors and aliases, tags, merge keys, a key twice, a decimal comma inside brackets.
 */
final class NodeBuilder {
    private static final int DEEPEST = 40;
    private static final Pattern NUMBER_START = Pattern.compile("[+-]?\\d.*");
    private static final Pattern NUMBER_END = Pattern.compile(".*\\d");
    private static final Pattern FIGURES = Pattern.compile("[+-]?\\d+");
    private static final Set<String> PLAIN_TAGS =
            Set.of(
                    "tag:yaml.org,2002:str",
                    "tag:yaml.org,2002:int",
                    "tag:yaml.org,2002:float",
                    "tag:yaml.org,2002:seq",
                    "tag:yaml.org,2002:map");

    private final SourceFile source;
    private final int[] letters;
    private final Set<Integer> bereft;
    private final List<Mistake> mistakes = new ArrayList<>();
    private Parser parser;
    private int line;

    /**
     * Makes a builder.
     *
     * @param source named in mistakes
     * @param text what the parser reads; the source's text, or what is left of it after a slip
     * @param bereft the lines, from 0, whose key may have lost its value with a slip
     */
    NodeBuilder(SourceFile source, String text, Set<Integer> bereft) {
        this.source = source;
        this.letters = text.codePoints().toArray();
        this.bereft = Set.copyOf(bereft);
    }

    List<Mistake> mistakes() {
        return mistakes;
    }

    Optional<Node> build(Parser events) {
        parser = events;
        parser.getEvent(); // the stream starts
        if (parser.checkEvent(Event.ID.StreamEnd)) {
            return Optional.empty();
        }
        parser.getEvent(); // the document starts
        Node root = node(0);
        parser.getEvent(); // the document ends
        if (!parser.checkEvent(Event.ID.StreamEnd)) {
            throw new Unreadable(
                    place(parser.peekEvent().getStartMark()),
                    "a second document in one file",
                    "one project a file");
        }
        return Optional.of(root);
    }

    private Node node(int depth) {
        Event event = parser.getEvent();
        Place place = place(event.getStartMark());
        if (event instanceof AliasEvent) {
            return refused(place, "an alias (*), which project files do not use", "written out");
        }
        refuseAnchorAndTag((NodeEvent) event, place);
        if (event instanceof ScalarEvent scalar) {
            return text(scalar, place);
        }
        if (depth > DEEPEST) {
            throw new Unreadable(place, "brackets or lists more than 40 deep", "a few levels");
        }
        return event instanceof SequenceStartEvent list
                ? listing(place, list.isFlow(), depth)
                : mapping(place, depth);
    }

    private Node text(ScalarEvent scalar, Place place) {
        String value = scalar.getValue();
        if (value.isEmpty() && scalar.isPlain() && bereft.contains(place.line() - 1)) {
            return new Node.Lost(place);
        }
        Optional<String> strange =
                value.codePoints()
                        .filter(StrangeMarks::isStrange)
                        .mapToObj(letter -> String.format("U+%04X", letter))
                        .findFirst();
        return strange.isEmpty()
                ? new Node.Text(place, value.strip())
                : refused(
                        place,
                        "a text with " + strange.get() + ", which is no letter",
                        "the text without it");
    }

    private void refuseAnchorAndTag(NodeEvent event, Place place) {
        if (event.getAnchor() != null) {
            refused(place, "an anchor (&), which project files do not use", "no anchor");
        }
        String tag =
                event instanceof ScalarEvent scalar
                        ? scalar.getTag()
                        : ((CollectionStartEvent) event).getTag();
        if (tag != null && !PLAIN_TAGS.contains(tag) && !tag.equals("!")) {
            refused(place, "a tag (" + tag + "), which project files do not use", "no tag");
        }
    }

    private Node refused(Place place, String found, String right) {
        tell(place, found, right);
        return new Node.Lost(place);
    }

    private Node listing(Place place, boolean flow, int depth) {
        List<Node> items = new ArrayList<>();
        int tight = 0;
        int loose = 0;
        while (!parser.checkEvent(Event.ID.SequenceEnd)) {
            int start = parser.peekEvent().getStartMark().getIndex();
            Node item = node(depth + 1);
            if (flow && !items.isEmpty() && areFigures(items.get(items.size() - 1), item)) {
                boolean spaced = start == 0 || letters[start - 1] != ',';
                tight += spaced ? 0 : 1;
                loose += spaced ? 1 : 0;
            } else if (!items.isEmpty()) {
                loose++;
            }
            items.add(item);
        }
        parser.getEvent();
        return new Node.Listing(place, items, tight > 0 && loose > 0);
    }

    private static boolean areFigures(Node before, Node after) {
        return before.asText().filter(t -> FIGURES.matcher(t.text()).matches()).isPresent()
                && after.asText().filter(t -> NUMBER_START.matcher(t.text()).matches()).isPresent();
    }

    private Node mapping(Place place, int depth) {
        Map<String, Node.Pair> pairs = new LinkedHashMap<>();
        Node before = null;
        String keyBefore = "";
        while (!parser.checkEvent(Event.ID.MappingEnd)) {
            Node key = node(depth + 1);
            boolean valueWritten = !isEmptyScalar(parser.peekEvent());
            Node value = node(depth + 1);
            Optional<Node.Text> name = key.asText();
            if (name.isEmpty()) {
                tell(key.place(), "a key that is itself a list or has keys", "a single word");
            } else if (!valueWritten && isSplitNumber(before, name.get())) {
                tellSplitNumber(before, name.get());
                loseHalfNumber(pairs, keyBefore, before);
            } else {
                addPair(pairs, new Node.Pair(name.get(), value));
                keyBefore = name.get().text();
            }
            before = value;
        }
        parser.getEvent();
        return new Node.Mapping(place, List.copyOf(pairs.values()));
    }

    private static boolean isEmptyScalar(Event event) {
        return event instanceof ScalarEvent scalar && scalar.getValue().isEmpty();
    }

    /** {@code {by: 3,5 cm}} is read as {@code by: 3} and a key {@code 5 cm} without a value. */
    private static boolean isSplitNumber(Node before, Node.Text key) {
        return before != null
                && NUMBER_START.matcher(key.text()).matches()
                && before.asText().filter(t -> NUMBER_END.matcher(t.text()).matches()).isPresent();
    }

    private void tellSplitNumber(Node before, Node.Text key) {
        String whole = before.asText().map(Node.Text::text).orElse("");
        tell(
                before.place(),
                "`" + whole + "," + key.text() + "`, a decimal comma that YAML splits in brackets",
                "`" + whole + "." + key.text() + "` with a point");
    }

    /** What stands before the comma is no value of hers, so nothing more is told of it. */
    private static void loseHalfNumber(Map<String, Node.Pair> pairs, String key, Node half) {
        pairs.computeIfPresent(
                key,
                (name, pair) ->
                        pair.value().equals(half)
                                ? new Node.Pair(pair.key(), new Node.Lost(half.place()))
                                : pair);
    }

    private void addPair(Map<String, Node.Pair> pairs, Node.Pair pair) {
        String key = pair.key().text();
        if (key.equals("<<")) {
            tell(pair.key().place(), "a merge key (<<)", "the keys written out, or `like`");
            return;
        }
        Node.Pair first = pairs.putIfAbsent(key, pair);
        if (first != null) {
            tell(
                    pair.key().place(),
                    "`" + key + "` a second time",
                    "it once (it stands in line " + first.key().place().line() + " already)");
        }
    }

    private void tell(Place place, String found, String right) {
        mistakes.add(source.mistake(place, found, right));
    }

    private Place place(Mark mark) {
        line = Math.min(mark.getLine(), source.lines().size() - 1);
        String written = source.lines().get(line);
        int column = Math.min(mark.getColumn(), written.codePointCount(0, written.length()));
        return new Place(source.name(), line + 1, column + 1);
    }

    /** The line, from 0, in which the last piece began that was read. */
    int lastLine() {
        return line;
    }

    /** What cannot be read on from. */
    static final class Unreadable extends YAMLException {
        private static final long serialVersionUID = 1;
        private final transient Place place;
        private final String found;
        private final String right;

        Unreadable(Place place, String found, String right) {
            super(found);
            this.place = place;
            this.found = found;
            this.right = right;
        }

        Mistake in(SourceFile source) {
            return source.mistake(place, found, right);
        }
    }
}
