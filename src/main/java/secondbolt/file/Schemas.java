package secondbolt.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Pieces of JSON Schema, as ordered maps. */
public final class Schemas {
    private Schemas() {}

    /** A schema that holds a type alone, to be added to. */
    public static Map<String, Object> ofType(String type) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", type);
        return schema;
    }

    /** A value that may be written as text or as a bare number. */
    public static Map<String, Object> textOrNumber() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", List.of("string", "number"));
        return schema;
    }

    /** The schema of a key's value, with what an editor shows about the key. */
    public static Map<String, Object> described(Key<?> key) {
        Map<String, Object> schema = new LinkedHashMap<>(key.form().schema());
        schema.put("description", key.meaning() + " " + sentence(key.form().words()));
        return schema;
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }
}
