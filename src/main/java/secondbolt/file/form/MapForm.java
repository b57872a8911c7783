package secondbolt.file.form;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Reading;
import secondbolt.file.Rule;
import secondbolt.file.Schemas;
import secondbolt.file.Spelling;
import secondbolt.file.source.Node;

/**
 * A mapping with known keys, read into a record.
 *
 * <p>An unknown key is told with the nearest known one; if that one is missing, the missing one is
 * not told as well, for it is the same slip.
 *
 * @param <T> what it is read as
 */
public final class MapForm<T> implements Form<T> {
    private final String what;
    private final List<Key<?>> keys;
    private final Function<Fields, Optional<T>> make;
    private final List<Rule> rules;

    private MapForm(
            String what, List<Key<?>> keys, Function<Fields, Optional<T>> make, List<Rule> rules) {
        this.what = what;
        this.keys = List.copyOf(keys);
        this.make = make;
        this.rules = List.copyOf(rules);
    }

    /** The same, its schema told the rules that hold between the keys, which {@code make} holds. */
    public MapForm<T> with(Rule... told) {
        return with(List.of(told));
    }

    /** The same of a list of rules. */
    public MapForm<T> with(List<Rule> told) {
        return new MapForm<>(what, keys, make, told);
    }

    /**
     * A mapping.
     *
     * @param what it describes, such as {@code a button}
     * @param keys all its keys
     * @param make turns the fields into the record; called only if every key was read without a
     *     mistake. It may tell mistakes of its own, and then returns nothing.
     */
    public static <T> MapForm<T> of(
            String what, List<Key<?>> keys, Function<Fields, Optional<T>> make) {
        return new MapForm<>(what, keys, make, List.of());
    }

    @Override
    public Optional<T> read(Node node, Reading reading) {
        Optional<Node.Mapping> mapping = node.asMapping();
        if (mapping.isEmpty()) {
            reading.tellKind(node, this);
            return Optional.empty();
        }
        int before = reading.mistakeCount();
        Fields fields = readKeys(mapping.get(), reading);
        return reading.mistakeCount() > before || !reading.isWhole()
                ? Optional.empty()
                : make.apply(fields);
    }

    private Fields readKeys(Node.Mapping mapping, Reading reading) {
        Fields fields = new Fields(mapping, reading);
        Misspelt misspelt = new Misspelt(free(mapping), new HashSet<>());
        for (Node.Pair pair : mapping.pairs()) {
            Optional<Key<?>> key =
                    keys.stream().filter(k -> k.name().equals(pair.key().text())).findFirst();
            if (key.isEmpty()) {
                tellUnknown(misspelt, pair, reading);
            } else if (key.get().need() == Key.Need.LATER) {
                reading.tell(
                        pair.key().place(),
                        "`" + pair.key().text() + "`, which this version does not work out yet",
                        "the file without it for now (put a # before its lines)");
            } else {
                fields.read(key.get(), pair.value());
            }
        }
        if (reading.isWhole()) {
            tellMissing(mapping, misspelt, reading);
        }
        return fields;
    }

    /**
     * The keys of a mapping that are not known.
     *
     * @param free the names that may still be written
     * @param meant those that they seem to be meant for
     */
    private record Misspelt(List<String> free, Set<String> meant) {}

    private Optional<String> nearest(String misspelt) {
        return Spelling.nearest(misspelt, keys.stream().map(Key::name).toList());
    }

    private void tellUnknown(Misspelt misspelt, Node.Pair pair, Reading reading) {
        Optional<String> near = nearest(pair.key().text());
        misspelt.meant().addAll(near.map(List::of).orElse(misspelt.free()));
        if (isStrange(pair.key().text())) {
            reading.tell(
                    pair.key().place(),
                    "`" + pair.key().text() + "` with a no-break space in it",
                    "`" + Spelling.plainSpaces(pair.key().text()) + "` with plain spaces");
            return;
        }
        String right = near.map(n -> "`" + n + "`").orElseGet(() -> instead(misspelt.free()));
        reading.tell(
                pair.key().place(),
                "`" + pair.key().text() + "`, which is not a key of " + what,
                right);
    }

    private static boolean isStrange(String key) {
        return !Spelling.plainSpaces(key).equals(key);
    }

    private String instead(List<String> free) {
        return free.isEmpty()
                ? "nothing: all that " + what + " can say is written"
                : "one of " + Spelling.quoted(free);
    }

    /** The names that may still be written, the required ones first. */
    private List<String> free(Node.Mapping mapping) {
        List<String> free = new ArrayList<>();
        for (Key.Need need : List.of(Key.Need.REQUIRED, Key.Need.OPTIONAL)) {
            keys.stream()
                    .filter(k -> k.need() == need && mapping.find(k.name()).isEmpty())
                    .forEach(k -> free.add(k.name()));
        }
        return free;
    }

    private void tellMissing(Node.Mapping mapping, Misspelt misspelt, Reading reading) {
        for (Key<?> key : keys) {
            boolean isMeant = misspelt.meant().contains(key.name());
            if (key.need() == Key.Need.REQUIRED && mapping.find(key.name()).isEmpty() && !isMeant) {
                reading.tell(
                        mapping.place(),
                        what + " without `" + key.name() + "`",
                        key.asked(reading.tape()));
            }
        }
    }

    @Override
    public boolean suits(Node node) {
        return node.asMapping().isPresent();
    }

    @Override
    public boolean mayBeNone() {
        return true;
    }

    @Override
    public String words() {
        return what + ", written as keys with values";
    }

    @Override
    public List<Key<?>> keys() {
        return keys;
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> properties = new LinkedHashMap<>();
        List<String> required = new ArrayList<>();
        for (Key<?> key : keys) {
            if (key.need() != Key.Need.LATER) {
                properties.putAll(Schemas.properties(key));
            }
            if (key.need() == Key.Need.REQUIRED) {
                required.add(key.name());
            }
        }
        Map<String, Object> schema = Schemas.ofType("object");
        schema.put("properties", properties);
        List<Rule> all = new ArrayList<>(rules);
        required.stream().filter(Schemas::isAlias).map(Rule::has).forEach(all::add);
        required.removeIf(Schemas::isAlias);
        if (!required.isEmpty()) {
            schema.put("required", required);
        }
        if (!all.isEmpty()) {
            schema.put("allOf", all.stream().map(Rule::schema).toList());
        }
        schema.put("additionalProperties", false);
        return schema;
    }
}
