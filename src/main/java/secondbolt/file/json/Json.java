package secondbolt.file.json;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * Writes JSON from ordered maps, lists, text, numbers and truth values; the same input gives the
 * same bytes.
 */
public final class Json {
    /** A tenth of a micrometre; finer digits differ between machines. */
    private static final int DECIMALS = 4;

    private final StringBuilder out = new StringBuilder();

    private Json() {}

    /**
     * Writes a value, indented, with a line end behind it.
     *
     * @throws IllegalArgumentException if it holds another kind of value
     */
    public static String write(Object value) {
        Json json = new Json();
        json.value(value, 0);
        return json.out.append('\n').toString();
    }

    private void value(Object value, int depth) {
        if (value instanceof Map<?, ?> map) {
            object(map, depth);
        } else if (value instanceof List<?> list) {
            array(list, depth);
        } else if (value instanceof String text) {
            text(text);
        } else if (value instanceof Double number) {
            out.append(number(number));
        } else if (value == null || value instanceof Integer || value instanceof Boolean) {
            out.append(value);
        } else {
            throw new IllegalArgumentException("not for JSON: " + value.getClass());
        }
    }

    private static String number(double number) {
        BigDecimal rounded =
                BigDecimal.valueOf(number)
                        .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                        .stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    private void object(Map<?, ?> map, int depth) {
        if (map.isEmpty()) {
            out.append("{}");
            return;
        }
        out.append("{\n");
        Iterator<? extends Map.Entry<?, ?>> entries = map.entrySet().iterator();
        while (entries.hasNext()) {
            Map.Entry<?, ?> entry = entries.next();
            indent(depth + 1);
            text(String.valueOf(entry.getKey()));
            out.append(": ");
            value(entry.getValue(), depth + 1);
            out.append(entries.hasNext() ? ",\n" : "\n");
        }
        indent(depth);
        out.append('}');
    }

    private void array(List<?> list, int depth) {
        boolean flat = list.stream().noneMatch(v -> v instanceof Map || v instanceof List);
        if (flat) {
            out.append('[');
            for (int i = 0; i < list.size(); i++) {
                out.append(i == 0 ? "" : ", ");
                value(list.get(i), depth);
            }
            out.append(']');
            return;
        }
        out.append("[\n");
        for (int i = 0; i < list.size(); i++) {
            indent(depth + 1);
            value(list.get(i), depth + 1);
            out.append(i < list.size() - 1 ? ",\n" : "\n");
        }
        indent(depth);
        out.append(']');
    }

    private void indent(int depth) {
        out.append("  ".repeat(depth));
    }

    private void text(String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                default -> {
                    if (c < ' ') {
                        out.append(String.format("\\u%04x", (int) c));
                    } else {
                        out.append(c);
                    }
                }
            }
        }
        out.append('"');
    }
}
