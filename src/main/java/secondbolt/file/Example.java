package secondbolt.file;

import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.Node;
import secondbolt.file.source.SourceFile;
import secondbolt.file.source.YamlReader;
import secondbolt.measure.Tape;

/**
 * How the value that is being read may be written: the key's own example, or the part of it that
 * stands for one item or one named value.
 *
 * @param label the key or the maker's own name before the value; empty for an item of a list
 * @param form how the value is written
 * @param model a value as it may be written, read only when it is asked for
 */
record Example(String label, Form<?> form, Supplier<Optional<Node>> model) {
    private static final Pattern BARE = Pattern.compile("\\d+(\\.\\d+)?");
    private static final Pattern SMALL = Pattern.compile("(\\d+(?:\\.\\d+)?) mm");

    /** The example of a key in a file on a tape. */
    static Example of(Key<?> key, Tape tape) {
        return new Example(key.name(), key.form(), () -> nodeOf(text(key, tape)));
    }

    /** A key's example as it may be written in a file on a tape. */
    static String text(Key<?> key, Tape tape) {
        return tape == Tape.CENTIMETRE
                ? key.example()
                : nodeOf(key.example()).map(n -> inInches(n, key.form()).flow()).orElse("");
    }

    /**
     * The same with each bare length, which is in centimetres, to the nearest eighth of an inch,
     * and each in millimetres to the nearest sixteenth.
     */
    private static Node inInches(Node node, Form<?> form) {
        return node.accept(
                new Node.Visitor<Node>() {
                    @Override
                    public Node text(Node.Text text) {
                        boolean isLength = form.words().contains("a length of");
                        Matcher small = SMALL.matcher(text.text());
                        if (isLength && BARE.matcher(text.text()).matches()) {
                            return new Node.Text(text.place(), inches(text.text(), 10, 8));
                        }
                        return isLength && small.matches()
                                ? new Node.Text(text.place(), inches(small.group(1), 1, 16))
                                : text;
                    }

                    @Override
                    public Node listing(Node.Listing list) {
                        return new Node.Listing(
                                list.place(),
                                list.items().stream().map(item -> inInches(item, form)).toList(),
                                false);
                    }

                    @Override
                    public Node mapping(Node.Mapping mapping) {
                        return new Node.Mapping(
                                mapping.place(),
                                mapping.pairs().stream()
                                        .map(p -> new Node.Pair(p.key(), under(p, form)))
                                        .toList());
                    }

                    @Override
                    public Node lost(Node.Lost lost) {
                        return lost;
                    }
                });
    }

    private static Node under(Node.Pair pair, Form<?> form) {
        Form<?> wanted =
                form.keys().stream()
                        .filter(key -> key.name().equals(pair.key().text()))
                        .findFirst()
                        .<Form<?>>map(Key::form)
                        .orElse(form);
        return inInches(pair.value(), wanted);
    }

    /** A figure of so many millimetres each, to the nearest of so many parts of an inch. */
    private static String inches(String figure, int millimetres, int parts) {
        long count =
                Math.max(1, Math.round(Double.parseDouble(figure) * millimetres / 25.4 * parts));
        long whole = count / parts;
        long over = count % parts;
        long common = parts;
        while (over % common != 0 || parts % common != 0) {
            common /= 2;
        }
        String part = over / common + "/" + parts / common;
        return over == 0 ? "" + whole : whole == 0 ? part : whole + " " + part;
    }

    private static Optional<Node> nodeOf(String text) {
        return new YamlReader(SourceFile.of("example", text), new Mistakes()).read();
    }

    /** The same of one item of a list. */
    Example item(Form<?> items) {
        return new Example(
                "",
                items,
                () ->
                        model.get()
                                .flatMap(Node::asListing)
                                .flatMap(l -> l.items().stream().findFirst()));
    }

    /** The same of a value under a name of the maker's own. */
    Example named(String name, Form<?> values) {
        return new Example(
                name,
                values,
                () ->
                        model.get()
                                .flatMap(Node::asMapping)
                                .flatMap(m -> m.pairs().stream().findFirst())
                                .map(Node.Pair::value));
    }

    /**
     * The line built from what she typed, such as {@code trim: {left: 3, right: 3, top: 3, bottom:
     * 3}} for {@code trim: 3}; it is one that the form itself takes.
     *
     * @return nothing if none can be built
     */
    Optional<String> line(Node typed, Reading reading) {
        String before = label.isEmpty() ? "" : label + ": ";
        return model.get()
                .flatMap(m -> new Rewording(form, reading).of(typed, m))
                .map(built -> "`" + before + built.text() + "`" + built.note());
    }
}
