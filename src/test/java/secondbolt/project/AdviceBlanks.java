package secondbolt.project;

import static secondbolt.project.PlainYaml.list;
import static secondbolt.project.PlainYaml.load;
import static secondbolt.project.PlainYaml.mapping;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.Key;
import secondbolt.measure.Tape;

/**
 * Fills the blanks of a line that is advised.
 *
 * @param root the file
 * @param advice the line, with what is said
 */
record AdviceBlanks(Map<String, Object> root, Advice advice) {
    private static final String BLANK = "…";

    /** The same with each blank filled by the example of its key, or by a name of her own. */
    Object filled(Object value, List<Key<?>> keys, String key) {
        if (value instanceof Map<?, ?> map) {
            List<Key<?>> inside = find(keys, key).map(k -> k.form().keys()).orElse(keys);
            Map<String, Object> filled = new LinkedHashMap<>();
            map.forEach(
                    (name, v) ->
                            filled.put(
                                    name.equals(BLANK) ? anEdge() : String.valueOf(name),
                                    v.equals(BLANK)
                                            ? example(inside, String.valueOf(name), keys, key)
                                            : filled(v, inside, String.valueOf(name))));
            return filled;
        }
        if (value.equals(List.of(List.of(BLANK, BLANK)))) {
            return List.of(
                    new ArrayList<>(
                            PlainYaml.sides(list(mapping(root.get("pattern")), "seams").get(0))));
        }
        return value.equals(List.of(BLANK)) ? new ArrayList<>(List.of(anEdge())) : value;
    }

    private Object example(List<Key<?>> keys, String name, List<Key<?>> above, String key) {
        if (key.equals("lines")) {
            return "10 cm";
        }
        if (key.equals("meaning")) {
            return name.equals("body") ? "sleeve" : "side";
        }
        Tape tape = root.get("units").equals("in") ? Tape.INCH : Tape.CENTIMETRE;
        return find(keys, name)
                .map(k -> load(k.example(tape)))
                .orElseGet(
                        () ->
                                mapping(load(find(above, key).orElseThrow().example(tape)))
                                        .values()
                                        .iterator()
                                        .next());
    }

    private static Optional<Key<?>> find(List<Key<?>> keys, String name) {
        Optional<Key<?>> here = keys.stream().filter(k -> k.name().equals(name)).findFirst();
        return here.isPresent()
                ? here
                : keys.stream().flatMap(k -> find(k.form().keys(), name).stream()).findFirst();
    }

    /** An edge of the piece that is spoken of. */
    private String anEdge() {
        Map<String, Object> pieces = mapping(mapping(root.get("pattern")).get("pieces"));
        Map<String, Object> piece =
                mapping(
                        pieces.keySet().stream()
                                .filter(advice::isTold)
                                .findFirst()
                                .map(pieces::get)
                                .orElse(pieces.values().iterator().next()));
        if (piece.containsKey("edges")) {
            return mapping(piece.get("edges")).keySet().iterator().next();
        }
        return piece.containsKey("outline")
                ? String.valueOf(mapping(list(piece, "outline").get(1)).get("edge"))
                : "left";
    }
}
