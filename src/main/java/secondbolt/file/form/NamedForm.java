package secondbolt.file.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Reading;
import secondbolt.file.Schemas;
import secondbolt.file.Spelling;
import secondbolt.file.source.Node;

/**
 * Values under names of the maker's own, such as her cloths, in the order written.
 *
 * <p>One may be {@code like} another named before it: it then has all of that one's keys but those
 * written for itself, and but for those that are each one's own.
 *
 * @param <T> what each is read as
 */
public final class NamedForm<T> implements Form<Map<String, T>> {
    /** The key that names another to be like. */
    public static final String LIKE = "like";

    private static final int LONGEST_NAME = 60;

    /** More than anyone sews of one kind in one project. */
    private static final int MOST_NAMES = 500;

    private final String what;
    private final Form<T> form;
    private final Set<String> own;
    private final int most;
    private final boolean mayBeLike;

    private NamedForm(String what, Form<T> form, Set<String> own, int most) {
        this.what = what;
        this.form = form;
        this.own = Set.copyOf(own);
        this.most = most;
        this.mayBeLike = form.keys().stream().anyMatch(key -> key.name().equals(LIKE));
    }

    /**
     * Named values.
     *
     * @param what one of them, such as {@code cloth}
     * @param form how each is written; if it has a key {@code like}, one may be like another
     */
    public static <T> Form<Map<String, T>> of(String what, Form<T> form) {
        return atMost(MOST_NAMES, what, form);
    }

    /**
     * Named values, so many at most.
     *
     * @param what one of them, such as {@code cloth}
     * @param form how each is written; if it has a key {@code like}, one may be like another
     */
    public static <T> Form<Map<String, T>> atMost(int most, String what, Form<T> form) {
        return new NamedForm<>(what, form, Set.of(), most);
    }

    /**
     * Named values of which one may be like another.
     *
     * @param own the keys that are never taken over from the other, for what they tell is found on
     *     one by one
     */
    public static <T> Form<Map<String, T>> of(String what, Form<T> form, Set<Key<?>> own) {
        return new NamedForm<>(
                what, form, own.stream().map(Key::name).collect(Collectors.toSet()), MOST_NAMES);
    }

    @Override
    public Optional<Map<String, T>> read(Node node, Reading reading) {
        Optional<Node.Mapping> mapping = node.asMapping().filter(m -> !m.pairs().isEmpty());
        if (mapping.isEmpty()) {
            reading.tellKind(node, this);
            return Optional.empty();
        }
        int count = mapping.get().pairs().size();
        if (count > most) {
            reading.tell(node.place(), count + " names", words() + ", at most " + most);
            return Optional.empty();
        }
        if (reading.tellUnnamed(mapping.get(), this, form)) {
            return Optional.empty();
        }
        Map<String, T> named = new LinkedHashMap<>();
        Map<String, Node> before = new LinkedHashMap<>();
        for (Node.Pair pair : mapping.get().pairs()) {
            String name = pair.key().text();
            if (name.isEmpty() || name.length() > LONGEST_NAME) {
                reading.tellWrong(pair.key(), "a name of 1 to " + LONGEST_NAME + " letters");
                continue;
            }
            if (!Spelling.plainSpaces(name).equals(name)) {
                reading.tell(
                        pair.key().place(),
                        "`" + name + "` with a no-break space in it",
                        "`" + Spelling.plainSpaces(name) + "` with plain spaces");
                continue;
            }
            resolve(pair.value(), before, reading)
                    .ifPresent(
                            whole -> {
                                before.put(name, whole);
                                reading.named(name, form, whole)
                                        .ifPresent(read -> named.put(name, read));
                            });
        }
        return named.size() == mapping.get().pairs().size() ? Optional.of(named) : Optional.empty();
    }

    private Optional<Node> resolve(Node value, Map<String, Node> before, Reading reading) {
        Optional<Node.Pair> like =
                mayBeLike ? value.asMapping().flatMap(m -> m.find(LIKE)) : Optional.empty();
        if (like.isEmpty()) {
            return Optional.of(value);
        }
        String model = like.get().value().asText().map(Node.Text::text).orElse("");
        Optional<Node.Mapping> other =
                Optional.ofNullable(before.get(model)).flatMap(Node::asMapping);
        if (other.isEmpty()) {
            String names = Spelling.quoted(before.keySet());
            reading.tellWrong(
                    like.get().value(),
                    "the name of a "
                            + what
                            + " that stands before it"
                            + (names.isEmpty() ? "" : ": " + names));
            return Optional.empty();
        }
        return Optional.of(overlaid(value.asMapping().orElseThrow(), other.get()));
    }

    private Node overlaid(Node.Mapping written, Node.Mapping model) {
        List<Node.Pair> pairs = new ArrayList<>(written.pairs());
        for (Node.Pair pair : model.pairs()) {
            String key = pair.key().text();
            if (!own.contains(key) && written.find(key).isEmpty()) {
                pairs.add(pair);
            }
        }
        return new Node.Mapping(written.place(), pairs);
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
        return "one or more of the kind `name of the " + what + ": …`";
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = Schemas.ofType("object");
        schema.put("additionalProperties", form.schema());
        schema.put("minProperties", 1);
        schema.put("maxProperties", most);
        Map<String, Object> names = new LinkedHashMap<>();
        names.put("minLength", 1);
        names.put("maxLength", LONGEST_NAME);
        schema.put("propertyNames", names);
        return schema;
    }

    @Override
    public List<Key<?>> keys() {
        return form.keys();
    }
}
