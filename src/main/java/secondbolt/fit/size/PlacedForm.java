package secondbolt.fit.size;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Placed;
import secondbolt.file.Reading;
import secondbolt.file.source.Node;

/**
 * A form whose value keeps its place, so that a check of the whole row can point at one number.
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
