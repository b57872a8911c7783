package secondbolt.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;

/** A project file as plain mappings, lists and texts, to be changed in a test. */
public final class PlainYaml {
    private PlainYaml() {}

    /** All scalars are text, so that nothing is read otherwise than it was written. */
    private static Yaml yaml() {
        LoaderOptions loading = new LoaderOptions();
        DumperOptions dumping = new DumperOptions();
        dumping.setWidth(500);
        Resolver plain =
                new Resolver() {
                    @Override
                    protected void addImplicitResolvers() {
                        // None: a figure stays as it is written.
                    }
                };
        return new Yaml(
                new SafeConstructor(loading), new Representer(dumping), dumping, loading, plain);
    }

    /** The text as mappings, lists and texts. */
    public static Object load(String text) {
        return yaml().load(text);
    }

    /** As text again. */
    public static String dump(Object value) {
        return yaml().dump(value);
    }

    /** What is known to be a mapping. */
    @SuppressWarnings("unchecked") // of scalars that are all text
    public static Map<String, Object> mapping(Object value) {
        return (Map<String, Object>) value;
    }

    @SuppressWarnings("unchecked") // of scalars that are all text
    static List<Object> list(Map<String, Object> from, String key) {
        if (!(from.get(key) instanceof List<?>)) {
            from.put(key, new ArrayList<>());
        }
        return (List<Object>) from.get(key);
    }

    /** The two sides of a join, however it is written. */
    static List<?> sides(Object seam) {
        return seam instanceof List<?> list ? list : (List<?>) mapping(seam).get("join");
    }
}
