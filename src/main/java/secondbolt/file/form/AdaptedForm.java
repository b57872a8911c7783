package secondbolt.file.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Reading;
import secondbolt.file.source.Node;
import secondbolt.measure.Tape;

/**
 * A form whose value is turned into another, checked, or given its place.
 *
 * @param form how it is written
 * @param adapt what becomes of the value; nothing once it has told a mistake
 */
record AdaptedForm<T, R>(Form<T> form, Adapter<T, R> adapt) implements Form<R> {
    /** Turns a value that was read into what is wanted. */
    @FunctionalInterface
    interface Adapter<T, R> {
        Optional<R> adapt(T value, Node node, Reading reading);
    }

    @Override
    public Optional<R> read(Node node, Reading reading) {
        return form.read(node, reading).flatMap(value -> adapt.adapt(value, node, reading));
    }

    @Override
    public boolean suits(Node node) {
        return form.suits(node);
    }

    @Override
    public boolean mayBeNone() {
        return form.mayBeNone();
    }

    @Override
    public String words() {
        return form.words();
    }

    @Override
    public String words(Tape tape) {
        return form.words(tape);
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
