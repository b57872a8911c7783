package secondbolt.file.form;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import secondbolt.file.Form;
import secondbolt.file.Reading;
import secondbolt.file.Spelling;
import secondbolt.file.source.Node;
import secondbolt.measure.Parsed;

/**
 * A single value, read from its letters.
 *
 * @param words what is right
 * @param schema the same in JSON Schema
 * @param parse reads the letters
 * @param mayBeNone whether {@code none} and {@code no} say that it is left out
 */
record TextForm<T>(
        String words,
        Map<String, Object> schema,
        BiFunction<String, Reading, Parsed<T>> parse,
        boolean mayBeNone)
        implements Form<T> {
    TextForm(
            String words,
            Map<String, Object> schema,
            BiFunction<String, Reading, Parsed<T>> parse) {
        this(words, schema, parse, false);
    }

    TextForm {
        schema = new LinkedHashMap<>(schema);
    }

    @Override
    public Optional<T> read(Node node, Reading reading) {
        Optional<Node.Text> text = node.asText().filter(t -> !t.text().isEmpty());
        if (text.isEmpty()) {
            reading.tellKind(node, this);
            return Optional.empty();
        }
        return parse.apply(Spelling.plainSpaces(text.get().text()), reading)
                .fold(
                        Optional::of,
                        refusal -> {
                            reading.tell(node.place(), refusal.found(), refusal.right());
                            return Optional.empty();
                        });
    }

    @Override
    public boolean suits(Node node) {
        return node.asText().isPresent();
    }
}
