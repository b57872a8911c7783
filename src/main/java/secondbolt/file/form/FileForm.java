package secondbolt.file.form;

import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import secondbolt.file.Form;
import secondbolt.file.Reading;
import secondbolt.file.Schemas;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.Node;
import secondbolt.file.source.SourceFile;

/**
 * The path of another file in the project's folder, read into what it holds.
 *
 * @param words what is right
 * @param read reads the other file, and tells the mistakes in it
 */
record FileForm<T>(String words, BiFunction<SourceFile, Mistakes, Optional<T>> read)
        implements Form<T> {
    @Override
    public Optional<T> read(Node node, Reading reading) {
        Optional<Node.Text> path = node.asText().filter(text -> !text.text().isEmpty());
        if (path.isEmpty()) {
            reading.tellWrong(node, words);
            return Optional.empty();
        }
        return reading.sibling(node, path.get().text()).flatMap(file -> reading.inside(file, read));
    }

    @Override
    public boolean suits(Node node) {
        return node.asText().isPresent();
    }

    @Override
    public Map<String, Object> schema() {
        return Schemas.ofType("string");
    }
}
