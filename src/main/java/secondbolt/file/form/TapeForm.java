package secondbolt.file.form;

import java.util.Map;
import java.util.Optional;
import secondbolt.file.Form;
import secondbolt.file.Reading;
import secondbolt.file.source.Node;
import secondbolt.measure.Tape;

/**
 * A form whose range is told in the units of the file's tape.
 *
 * @param metric the form, in words for a metric tape
 * @param inch the same in words for an inch tape, drawn in so that both ends are taken
 */
record TapeForm<T>(Form<T> metric, String inch) implements Form<T> {
    @Override
    public Optional<T> read(Node node, Reading reading) {
        return metric.read(node, reading);
    }

    @Override
    public boolean suits(Node node) {
        return metric.suits(node);
    }

    @Override
    public String words() {
        return metric.words();
    }

    @Override
    public String words(Tape tape) {
        return tape == Tape.INCH ? inch : words();
    }

    @Override
    public Map<String, Object> schema() {
        return metric.schema();
    }
}
