package secondbolt.file.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import secondbolt.file.Form;
import secondbolt.file.Key;
import secondbolt.file.Reading;
import secondbolt.file.source.Node;
import secondbolt.measure.Tape;

/**
 * A form among others that only some texts suit.
 *
 * @param form reads them
 * @param suited which texts they are
 */
record NarrowForm<T>(Form<T> form, Predicate<String> suited) implements Form<T> {
    @Override
    public Optional<T> read(Node node, Reading reading) {
        return form.read(node, reading);
    }

    @Override
    public boolean suits(Node node) {
        return node.asText().filter(text -> suited.test(text.text())).isPresent();
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
