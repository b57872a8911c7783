package secondbolt.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import secondbolt.file.source.Node;

/**
 * Puts what a maker typed into the form that is wanted, after a model: the first way that the form
 * itself takes is the one.
 *
 * @param form what must take it
 * @param reading on which tape; nothing is told there
 */
record Rewording(Form<?> form, Reading reading) {
    private static final int DEEPEST = 4;
    private static final int MOST_TRIED = 200;
    private static final int MOST_LEAVES = 40;
    private static final int MOST_LETTERS = 1000;

    /** Words that are an answer, and no part of a value. */
    private static final Set<String> SAID = Set.of("unknown", "none", "no", "yes");

    /** How makers part two figures: 150 x 240, 150 by 240. */
    private static final Pattern PARTED = Pattern.compile("\\s*+(?:[x×*;,]|\\bby\\b)\\s*+");

    /**
     * A value in other words.
     *
     * @param text as it may be written
     * @param note goes on behind it: whether any of it is not hers
     */
    record Reworded(String text, String note) {}

    /** What she typed, put like the model; the model itself if nothing of hers fits in. */
    Optional<Reworded> of(Node typed, Node model) {
        if (!isGlance(typed)) {
            return Optional.empty();
        }
        boolean isSaid = typed.asText().filter(text -> SAID.contains(text.text())).isPresent();
        Stream<Node> hers = isSaid ? Stream.of() : ways(typed, model, form, 0);
        return Stream.concat(hers, Stream.of(model))
                .limit(MOST_TRIED)
                .filter(way -> takes(form, way))
                .findFirst()
                .map(way -> new Reworded(way.flow(), note(way, typed)));
    }

    /** Whether it is no more than a person means by one value. */
    private static boolean isGlance(Node typed) {
        return leaves(typed).limit(MOST_LEAVES + 1L).count() <= MOST_LEAVES
                && leaves(typed).mapToInt(String::length).sum() <= MOST_LETTERS;
    }

    private static String note(Node way, Node typed) {
        Set<String> hers = new HashSet<>();
        leaves(typed)
                .forEach(
                        leaf -> {
                            hers.add(leaf);
                            hers.addAll(List.of(PARTED.split(leaf)));
                        });
        long foreign = leaves(way).filter(leaf -> !hers.contains(leaf)).count();
        return foreign == 0 ? "" : " with your own values";
    }

    private static Stream<String> leaves(Node node) {
        return node.asText().map(t -> Stream.of(t.text())).orElseGet(() -> insideLeaves(node));
    }

    private static Stream<String> insideLeaves(Node node) {
        return Stream.concat(
                        node.asListing().stream().flatMap(l -> l.items().stream()),
                        node.asMapping().stream()
                                .flatMap(m -> m.pairs().stream())
                                .map(Node.Pair::value))
                .flatMap(Rewording::leaves);
    }

    private boolean takes(Form<?> wanted, Node way) {
        Reading silent = reading.silent();
        return wanted.read(way, silent).isPresent() && silent.mistakeCount() == 0;
    }

    private Stream<Node> ways(Node typed, Node model, Form<?> wanted, int depth) {
        if (depth > DEEPEST) {
            return Stream.of();
        }
        return Stream.of(
                        model.asMapping().map(m -> asMapping(typed, m, wanted, depth)),
                        model.asListing().map(l -> asListing(typed, l, wanted, depth)),
                        model.asText().map(text -> asText(typed)))
                .flatMap(Optional::stream)
                .findFirst()
                .orElseGet(Stream::of);
    }

    private static Stream<Node> asText(Node typed) {
        return leaves(typed).map(leaf -> new Node.Text(typed.place(), leaf));
    }

    /** Under every key of the model, under one, and under one beside the rest of the model. */
    private Stream<Node> asMapping(Node typed, Node.Mapping model, Form<?> wanted, int depth) {
        List<Node.Pair> taking =
                model.pairs().stream().filter(pair -> takesUnder(pair, typed, wanted)).toList();
        List<Node> ways = new ArrayList<>();
        if (taking.size() > 1 && taking.size() == model.pairs().size()) {
            ways.add(put(model, taking, pair -> typed));
        }
        zipped(typed, model).ifPresent(ways::add);
        taking.forEach(pair -> ways.add(put(model, List.of(pair), one -> typed)));
        taking.forEach(pair -> ways.add(beside(model, pair, typed)));
        Stream<Node> deeper =
                model.pairs().stream()
                        .filter(pair -> !pair.value().asText().isPresent())
                        .flatMap(
                                pair ->
                                        ways(typed, pair.value(), inside(pair, wanted), depth + 1)
                                                .flatMap(
                                                        way ->
                                                                Stream.of(
                                                                        put(
                                                                                model,
                                                                                List.of(pair),
                                                                                one -> way),
                                                                        beside(model, pair, way))));
        return Stream.concat(ways.stream(), deeper);
    }

    private boolean takesUnder(Node.Pair pair, Node typed, Form<?> wanted) {
        return keyOf(pair, wanted).filter(key -> takes(key.form(), typed)).isPresent();
    }

    /** The form of a key's value; of a name of her own, the keys of what stands under it. */
    private static Form<?> inside(Node.Pair pair, Form<?> wanted) {
        return keyOf(pair, wanted).<Form<?>>map(Key::form).orElse(wanted);
    }

    private static Optional<Key<?>> keyOf(Node.Pair pair, Form<?> wanted) {
        return wanted.keys().stream().filter(k -> k.name().equals(pair.key().text())).findFirst();
    }

    private static Optional<Node> zipped(Node typed, Node.Mapping model) {
        return typed.asListing()
                .filter(list -> list.items().size() == model.pairs().size())
                .map(
                        list ->
                                put(
                                        model,
                                        model.pairs(),
                                        pair -> list.items().get(model.pairs().indexOf(pair))));
    }

    private static Node put(
            Node.Mapping model, List<Node.Pair> under, Function<Node.Pair, Node> value) {
        return new Node.Mapping(
                model.place(),
                under.stream().map(p -> new Node.Pair(p.key(), value.apply(p))).toList());
    }

    private static Node beside(Node.Mapping model, Node.Pair instead, Node value) {
        return put(
                model,
                model.pairs(),
                pair -> pair.key().equals(instead.key()) ? value : pair.value());
    }

    /** Parted, alone in a list, like an item of the model, and before the rest of it. */
    private Stream<Node> asListing(Node typed, Node.Listing model, Form<?> wanted, int depth) {
        List<Node> ways = new ArrayList<>();
        typed.asText()
                .map(text -> List.of(PARTED.split(text.text())))
                .filter(parts -> parts.size() > 1)
                .ifPresent(
                        parts ->
                                ways.add(
                                        list(
                                                model,
                                                parts.stream()
                                                        .<Node>map(
                                                                p ->
                                                                        new Node.Text(
                                                                                typed.place(), p))
                                                        .toList())));
        ways.add(list(model, List.of(typed)));
        Stream<Node> like =
                model.items().stream()
                        .limit(1)
                        .flatMap(item -> ways(typed, item, wanted, depth + 1))
                        .map(way -> list(model, List.of(way)));
        return Stream.of(ways.stream(), like, first(typed, model)).flatMap(Function.identity());
    }

    private static Stream<Node> first(Node typed, Node.Listing model) {
        if (model.items().isEmpty()) {
            return Stream.of();
        }
        List<Node> items = new ArrayList<>(model.items());
        items.set(0, typed);
        return Stream.of(list(model, items));
    }

    private static Node list(Node.Listing model, List<Node> items) {
        return new Node.Listing(model.place(), items, false);
    }
}
