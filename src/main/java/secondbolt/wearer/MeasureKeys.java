package secondbolt.wearer;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import secondbolt.file.Fields;
import secondbolt.file.Form;
import secondbolt.file.Key;

/**
 * One optional key for each body measurement, so that a misspelt name is told with the nearest.
 *
 * @param byMeasure the key of each
 * @param <T> what is written under a name
 */
record MeasureKeys<T>(Map<BodyMeasure, Key<T>> byMeasure) {
    MeasureKeys {
        byMeasure = Collections.unmodifiableMap(new LinkedHashMap<>(byMeasure));
    }

    /** Keys whose values are written in this form. */
    static <T> MeasureKeys<T> of(
            Function<BodyMeasure, Form<T>> form,
            Function<BodyMeasure, String> meaning,
            Function<BodyMeasure, String> example) {
        Map<BodyMeasure, Key<T>> keys = new LinkedHashMap<>();
        for (BodyMeasure measure : BodyMeasure.values()) {
            keys.put(
                    measure,
                    Key.optional(
                            measure.word(),
                            form.apply(measure),
                            meaning.apply(measure),
                            example.apply(measure)));
        }
        return new MeasureKeys<>(keys);
    }

    List<Key<?>> keys() {
        return List.copyOf(byMeasure.values());
    }

    /** What was written, down the body. */
    Map<BodyMeasure, T> read(Fields fields) {
        Map<BodyMeasure, T> read = new LinkedHashMap<>();
        byMeasure.forEach((m, key) -> fields.get(key).ifPresent(value -> read.put(m, value)));
        return read;
    }
}
