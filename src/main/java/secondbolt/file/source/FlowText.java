package secondbolt.file.source;

import java.util.stream.Collectors;

/** Writes nodes in one line, with quotation marks where YAML would read something else. */
public final class FlowText implements Node.Visitor<String> {
    private static final String NEVER_FIRST = ",[]{}#&*!|>'\"%@`?:-";
    private static final String NEVER_PLAIN = ",[]{}#\"";

    String of(Node node) {
        return node.accept(this);
    }

    @Override
    public String text(Node.Text text) {
        return quoted(text.text());
    }

    /** A text as it may stand between brackets. */
    public static String quoted(String letters) {
        return isPlain(letters)
                ? letters
                : "\""
                        + Visible.escaped(letters.replace("\\", "\\\\").replace("\"", "\\\""))
                        + "\"";
    }

    private static boolean isPlain(String letters) {
        if (letters.isEmpty()
                || Character.isWhitespace(letters.charAt(0))
                || NEVER_FIRST.indexOf(letters.charAt(0)) >= 0
                || letters.codePoints().anyMatch(Visible::isUnseen)) {
            return false;
        }
        for (int i = 0; i < letters.length(); i++) {
            char letter = letters.charAt(i);
            boolean isBeforeBlank =
                    i + 1 == letters.length() || Character.isWhitespace(letters.charAt(i + 1));
            if (NEVER_PLAIN.indexOf(letter) >= 0 || (letter == ':' && isBeforeBlank)) {
                return false;
            }
        }
        return true;
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
