package secondbolt.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import secondbolt.file.source.Node;

/**
 * A form whose value is turned into another.
 *
 * @param form how it is written
 * @param change what it becomes
 */
record MappedForm<T, R>(Form<T> form, Function<T, R> change) implements Form<R> {
    @Override
    public Optional<R> read(Node node, Reading reading) {
        return form.read(node, reading).map(change);
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
