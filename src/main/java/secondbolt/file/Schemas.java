package secondbolt.file;

import java.util.ArrayList;
import java.util.Collection;
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

    /** Free text, which a parser of YAML may take for a number, or for true or false. */
    public static Map<String, Object> freeText() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", List.of("string", "number", "boolean"));
        return schema;
    }

    /** A number, also as text, such as one with a decimal comma. */
    public static Map<String, Object> number(String type, String pattern) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", List.of(type, "string"));
        schema.put("pattern", pattern);
        return schema;
    }

    /** Words to choose from; a parser of YAML 1.1 takes some of them for true or false. */
    public static List<Object> choices(Collection<String> words) {
        List<Object> choices = new ArrayList<>(words);
        words.stream()
                .map(Rule::alias)
                .filter(alias -> !alias.isEmpty())
                .map(Boolean::valueOf)
                .filter(value -> !choices.contains(value))
                .forEach(choices::add);
        return choices;
    }

    /** A key with its value, under each name that a parser of YAML gives it. */
    public static Map<String, Object> properties(Key<?> key) {
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put(key.name(), described(key));
        if (isAlias(key.name())) {
            properties.put(Rule.alias(key.name()), described(key));
        }
        return properties;
    }

    /** Whether a parser of YAML 1.1 gives a key another name. */
    public static boolean isAlias(String name) {
        return !Rule.alias(name).isEmpty();
    }

    /** The schema of a key's value, with what an editor shows about the key. */
    public static Map<String, Object> described(Key<?> key) {
        Map<String, Object> schema =
                said(key).isEmpty()
                        ? new LinkedHashMap<>(key.form().schema())
                        : orSaid(key.form().schema(), said(key));
        schema.put("description", key.meaning() + " " + sentence(key.form().words()));
        return schema;
    }

    /** The words that stand for a value of any form. */
    private static List<String> said(Key<?> key) {
        List<String> said = new ArrayList<>(key.mayBeNone() ? Key.NONE : List.of());
        if (key.mayBeOpen()) {
            said.add(Key.UNKNOWN);
        }
        return said;
    }

    private static Map<String, Object> orSaid(Map<String, Object> form, List<String> said) {
        Map<String, Object> none = new LinkedHashMap<>();
        none.put("enum", choices(said));
        Map<String, Object> either = new LinkedHashMap<>();
        either.put("anyOf", List.of(form, none));
        return either;
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }
}
