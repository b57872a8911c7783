package secondbolt.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import secondbolt.file.source.Node;

/**
 * A form whose value must pass a check as well.
 *
 * @param form how it is written
 * @param check what it must pass
 * @param right what would be right when it does not
 */
record CheckedForm<T>(Form<T> form, Predicate<T> check, String right) implements Form<T> {
    @Override
    public Optional<T> read(Node node, Reading reading) {
        Optional<T> read = form.read(node, reading);
        if (read.isPresent() && !check.test(read.get())) {
            reading.tellWrong(node, right);
            return Optional.empty();
        }
        return read;
    }

    @Override
    public boolean suits(Node node) {
        return form.suits(node);
    }

    @Override
    public String words() {
        return form.words();
    }

    @Override
    public Map<String, Object> schema() {
        return form.schema();
    }

    @Override
    public List<Key<?>> keys() {
        return form.keys();
    }
}
