package secondbolt.file;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a mapping's keys ask of each other, in JSON Schema: the same that the reader holds.
 *
 * <p>A parser of YAML 1.1 takes the key {@code on} for the value true, which JSON then names {@code
 * "true"}; so that spelling counts as the key.
 *
 * @param schema as an ordered map
 */
public record Rule(Map<String, Object> schema) {
    private static final Set<String> TRUE_WORDS = Set.of("on", "yes", "true");
    private static final Set<String> FALSE_WORDS = Set.of("off", "no", "false");

    /** Each of these keys is written. */
    public static Rule has(String... names) {
        return both(Arrays.stream(names).map(Rule::hasOne).toList());
    }

    private static Rule hasOne(String name) {
        Rule written = of("required", List.of(name));
        return alias(name).isEmpty() ? written : any(written, of("required", List.of(alias(name))));
    }

    /** How a parser of YAML 1.1 names a key; empty if as it is. */
    static String alias(String name) {
        return TRUE_WORDS.contains(name) ? "true" : FALSE_WORDS.contains(name) ? "false" : "";
    }

    /** A key holds this value: a word or a whole number. */
    public static Rule is(String name, Object value) {
        Rule is = of("properties", of(name, of("const", value).schema()).schema());
        is.schema().put("required", List.of(name));
        return is;
    }

    /** One of these keys is written, and no other of them. */
    public static Rule one(String... names) {
        return of("oneOf", schemas(Arrays.stream(names).map(Rule::hasOne).toList()));
    }

    /** One of these keys is written, or several. */
    public static Rule some(String... names) {
        return of("anyOf", schemas(Arrays.stream(names).map(Rule::hasOne).toList()));
    }

    /** One of these holds, or several. */
    public static Rule any(Rule... rules) {
        return of("anyOf", schemas(List.of(rules)));
    }

    /** They do not hold together. */
    public static Rule not(Rule... rules) {
        return of("not", both(rules).schema());
    }

    /** All of them hold. */
    public static Rule both(Rule... rules) {
        return both(List.of(rules));
    }

    /** All of them hold. */
    public static Rule both(List<Rule> rules) {
        return of("allOf", schemas(rules));
    }

    /** Where the first holds, so does the second. */
    public static Rule when(Rule first, Rule second) {
        Rule rule = of("if", first.schema());
        rule.schema().put("then", second.schema());
        return rule;
    }

    private static List<Object> schemas(List<Rule> rules) {
        return rules.stream().<Object>map(Rule::schema).toList();
    }

    private static Rule of(String name, Object value) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(name, value);
        return new Rule(map);
    }
}
