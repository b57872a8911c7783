package secondbolt.file.form;

import java.util.Map;
import java.util.Optional;
import secondbolt.file.Form;
import secondbolt.file.Reading;
import secondbolt.file.source.Node;

/**
 * One word that stands for a value, and suits no other text.
 *
 * @param word as written
 * @param value what it stands for
 * @param schema the same in JSON Schema
 */
record WordForm<T>(String word, T value, Map<String, Object> schema) implements Form<T> {
    @Override
    public Optional<T> read(Node node, Reading reading) {
        if (suits(node)) {
            return Optional.of(value);
        }
        reading.tellWrong(node, words());
        return Optional.empty();
    }

    @Override
    public boolean suits(Node node) {
        return node.asText().filter(text -> text.text().equals(word)).isPresent();
    }

    @Override
    public String words() {
        return "`" + word + "`";
    }
}
