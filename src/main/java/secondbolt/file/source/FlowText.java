package secondbolt.file.source;

import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Writes nodes in one line, with quotation marks where YAML would read something else. */
public final class FlowText implements Node.Visitor<String> {
    private static final Pattern PLAIN =
            Pattern.compile("[^\\s,\\[\\]{}#&*!|>'\"%@`?:-]([^,\\[\\]{}#:\"]|:(?=\\S))*");

    String of(Node node) {
        return node.accept(this);
    }

    @Override
    public String text(Node.Text text) {
        return quoted(text.text());
    }

    /** A text as it may stand between brackets. */
    public static String quoted(String letters) {
        return PLAIN.matcher(letters).matches()
                ? letters
                : "\"" + letters.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    @Override
    public String listing(Node.Listing listing) {
        return listing.items().stream().map(this::of).collect(Collectors.joining(", ", "[", "]"));
    }

    @Override
    public String mapping(Node.Mapping mapping) {
        return mapping.pairs().stream()
                .map(pair -> of(pair.key()) + ": " + of(pair.value()))
                .collect(Collectors.joining(", ", "{", "}"));
    }

    @Override
    public String lost(Node.Lost lost) {
        return "";
    }
}
