package secondbolt.notebook;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * What the last making of a notebook came to, place by place, with all it depended on. What a
 * making does not use is forgotten at its end, so that it never holds more than one notebook.
 */
final class Memory {
    private Map<String, Made> last = Map.of();
    private Map<String, Made> now = new ConcurrentHashMap<>();

    /** A value and what it was made from. */
    private record Made(Object asked, Object value) {}

    void begin() {
        now = new ConcurrentHashMap<>();
    }

    void end() {
        last = now;
    }

    /**
     * What stood at a place the last time, if it was made from the same; else what is made now.
     *
     * @param place its name, always for values of one type
     * @param asked all that the value depends on, compared by what it holds
     */
    @SuppressWarnings("unchecked") // a place always holds values of one type
    <T> T recall(String place, Object asked, Supplier<T> make) {
        Made before = last.get(place);
        Made made =
                before != null && before.asked().equals(asked)
                        ? before
                        : new Made(asked, make.get());
        now.put(place, made);
        return (T) made.value();
    }
}
