package secondbolt.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.source.Node;

/**
 * A form whose value comes with the place it stands at, for checks that look further than it.
 *
 * @param form how it is written
 */
record PlacedForm<T>(Form<T> form) implements Form<Placed<T>> {
    @Override
    public Optional<Placed<T>> read(Node node, Reading reading) {
        return form.read(node, reading).map(value -> new Placed<>(value, node.place()));
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
