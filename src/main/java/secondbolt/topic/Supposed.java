package secondbolt.topic;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import secondbolt.file.Key;

/**
 * Values supposed to stand under keys in place of what is written.
 *
 * @param values by the names of the keys
 */
record Supposed(Map<String, Object> values) {
    /** Everything as written. */
    static final Supposed NOTHING = new Supposed(Map.of());

    Supposed {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    Supposed with(Key<?> key, Object value) {
        Map<String, Object> more = new LinkedHashMap<>(values);
        more.put(key.name(), value);
        return new Supposed(more);
    }

    /** These, and where they say nothing, the others. */
    Supposed over(Supposed others) {
        Map<String, Object> more = new LinkedHashMap<>(others.values);
        more.putAll(values);
        return new Supposed(more);
    }
}
