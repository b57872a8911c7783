package secondbolt.notebook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import secondbolt.file.Form;
import secondbolt.file.Key;

/**
 * What the reference of the project file shows.
 *
 * @param version of the program
 * @param keys those of the file's top level
 * @param beside files that may lie beside it
 */
public record ReferencePage(String version, List<KeyView> keys, List<FileView> beside) {
    /**
     * Another file.
     *
     * @param id its anchor
     * @param name of the file
     * @param keys those of its top level
     */
    public record FileView(String id, String name, List<KeyView> keys) {}

    /**
     * A key.
     *
     * @param id its anchor
     * @param name as written
     * @param need {@code required}, {@code optional} or {@code later}
     * @param meaning what it is for; words in backticks are code
     * @param form how its value is written; words in backticks are code
     * @param example a value; may be empty
     * @param keys the keys inside
     */
    public record KeyView(
            String id,
            String name,
            String need,
            String meaning,
            String form,
            String example,
            List<KeyView> keys) {}

    static ReferencePage of(String version, Form<?> root, Map<String, Form<?>> beside) {
        Set<String> ids = new HashSet<>();
        List<KeyView> keys = views("key", root.keys(), ids);
        List<FileView> files = new ArrayList<>();
        beside.forEach(
                (name, form) -> {
                    String id = free("file." + name, ids);
                    files.add(new FileView(id, name, views(id, form.keys(), ids)));
                });
        return new ReferencePage(version, keys, files);
    }

    private static List<KeyView> views(String above, List<Key<?>> keys, Set<String> ids) {
        return keys.stream().map(key -> view(above, key, ids)).toList();
    }

    private static KeyView view(String above, Key<?> key, Set<String> ids) {
        String id = free(above + "." + key.name().replace(' ', '-'), ids);
        return new KeyView(
                id,
                key.name(),
                need(key.need()),
                key.meaning(),
                key.form().words(),
                key.example(),
                views(id, key.form().keys(), ids));
    }

    private static String need(Key.Need need) {
        return switch (need) {
            case REQUIRED -> "required";
            case OPTIONAL -> "optional";
            case LATER -> "later";
        };
    }

    /** Two ways to write one value may share a key; each needs an anchor of its own. */
    private static String free(String id, Set<String> ids) {
        String free = id;
        for (int i = 2; !ids.add(free); i++) {
            free = id + "-" + i;
        }
        return free;
    }
}
