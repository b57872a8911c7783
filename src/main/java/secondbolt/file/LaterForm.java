package secondbolt.file;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import secondbolt.file.source.Node;

/** Refuses whatever is written: the key is known, but not worked out yet. */
final class LaterForm implements Form<String> {
    @Override
    public Optional<String> read(Node node, Reading reading) {
        return Optional.empty();
    }

    @Override
    public boolean suits(Node node) {
        return true;
    }

    @Override
    public String words() {
        return "not worked out yet by this version";
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("not", new LinkedHashMap<String, Object>());
        return schema;
    }
}
