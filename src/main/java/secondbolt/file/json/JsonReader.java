package secondbolt.file.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads JSON that an earlier run wrote, as ordered maps, lists, text, {@link BigDecimal}s, truth
 * values and nulls.
 *
 * <p>What a maker writes is YAML and is read with its places; this is for files she does not write.
 * Whoever wrote the text, reading ends in time and memory that grow with its length alone: what is
 * nested too deeply, holds too many values, or says a key twice, is not JSON of this program.
 *
 * <p>Source: RFC 8259.
 */
public final class JsonReader {
    private static final int DEEPEST = 100;

    /** Largest lists of figures are a hundredth of this. */
    private static final int MOST_VALUES = 500_000;

    private static final int LONGEST_NUMBER = 70;

    private final String text;
    private int at;
    private int values;

    private JsonReader(String text) {
        this.text = text;
    }

    /** The text is not JSON. Values may be null, so that an {@code Optional} cannot say it. */
    private static final class BrokenJson extends Exception {
        private static final long serialVersionUID = 1L;
    }

    /** The object a text holds, if it is whole JSON and an object. */
    public static Optional<Map<String, Object>> readObject(String text) {
        try {
            JsonReader reader = new JsonReader(text);
            reader.skipSpace();
            if (!reader.next('{')) {
                return Optional.empty();
            }
            Map<String, Object> object = reader.object(0);
            reader.skipSpace();
            return reader.at == text.length() ? Optional.of(object) : Optional.empty();
        } catch (BrokenJson e) {
            return Optional.empty();
        }
    }

    private Object value(int depth) throws BrokenJson {
        skipSpace();
        if (depth > DEEPEST || at >= text.length() || ++values > MOST_VALUES) {
            throw new BrokenJson();
        }
        if (next('{')) {
            return object(depth);
        }
        if (next('[')) {
            return array(depth);
        }
        return text.charAt(at) == '"' ? string() : word();
    }

    private Map<String, Object> object(int depth) throws BrokenJson {
        Map<String, Object> object = new LinkedHashMap<>();
        skipSpace();
        if (next('}')) {
            return object;
        }
        do {
            skipSpace();
            String key = string();
            skipSpace();
            require(':');
            if (object.containsKey(key)) {
                throw new BrokenJson();
            }
            object.put(key, value(depth + 1));
            skipSpace();
        } while (next(','));
        require('}');
        return Collections.unmodifiableMap(object);
    }

    private List<Object> array(int depth) throws BrokenJson {
        List<Object> array = new ArrayList<>();
        skipSpace();
        if (next(']')) {
            return array;
        }
        do {
            array.add(value(depth + 1));
            skipSpace();
        } while (next(','));
        require(']');
        return Collections.unmodifiableList(array);
    }

    private String string() throws BrokenJson {
        require('"');
        StringBuilder out = new StringBuilder();
        while (!next('"')) {
            char c = take();
            if (c < ' ') {
                throw new BrokenJson();
            }
            out.append(c == '\\' ? escaped() : c);
        }
        return out.toString();
    }

    private char escaped() throws BrokenJson {
        char c = take();
        return switch (c) {
            case '"', '\\', '/' -> c;
            case 'b' -> '\b';
            case 'f' -> '\f';
            case 'n' -> '\n';
            case 'r' -> '\r';
            case 't' -> '\t';
            case 'u' -> codeUnit();
            default -> throw new BrokenJson();
        };
    }

    private char codeUnit() throws BrokenJson {
        int code = 0;
        for (int i = 0; i < 4; i++) {
            int digit = Character.digit(take(), 16);
            if (digit < 0) {
                throw new BrokenJson();
            }
            code = code * 16 + digit;
        }
        return (char) code;
    }

    /** A number, {@code true}, {@code false} or {@code null}. */
    private Object word() throws BrokenJson {
        int start = at;
        while (at < text.length()
                && at - start <= LONGEST_NUMBER
                && ",]} \n\r\t".indexOf(text.charAt(at)) < 0) {
            at++;
        }
        String word = text.substring(start, at);
        return switch (word) {
            case "true" -> true;
            case "false" -> false;
            case "null" -> null;
            default -> number(word);
        };
    }

    private static BigDecimal number(String word) throws BrokenJson {
        if (!word.matches("-?[0-9]{1,30}([.][0-9]{1,30})?([eE][+-]?[0-9]{1,3})?")) {
            throw new BrokenJson();
        }
        return new BigDecimal(word);
    }

    private void skipSpace() {
        while (at < text.length() && " \n\r\t".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private boolean next(char c) {
        boolean there = at < text.length() && text.charAt(at) == c;
        at += there ? 1 : 0;
        return there;
    }

    private char take() throws BrokenJson {
        if (at >= text.length()) {
            throw new BrokenJson();
        }
        return text.charAt(at++);
    }

    private void require(char c) throws BrokenJson {
        if (!next(c)) {
            throw new BrokenJson();
        }
    }
}
