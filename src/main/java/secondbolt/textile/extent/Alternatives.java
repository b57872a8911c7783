package secondbolt.textile.extent;

import java.util.Optional;
import secondbolt.file.Fields;
import secondbolt.file.Key;
import secondbolt.file.value.Answer;

/**
 * Two keys of which only one may be written.
 *
 * <p>A cloth that is like another has that one's keys too; then the one it writes itself counts.
 *
 * @param first taken if neither is written
 * @param second the other
 */
public record Alternatives(Key<?> first, Key<?> second) {
    /** Two keys of which one is to be written. */
    public static Alternatives of(Key<?> first, Key<?> second) {
        return new Alternatives(first, second);
    }

    /** The one that counts, a known one first; nothing, and a mistake told, if both do. */
    public Optional<Key<?>> chosen(Fields fields) {
        boolean both = fields.get(first).isPresent() && fields.get(second).isPresent();
        if (!both) {
            return Optional.of(fields.get(second).isPresent() ? second : first);
        }
        if (isOwn(first, fields) != isOwn(second, fields)) {
            return Optional.of(isOwn(first, fields) ? first : second);
        }
        if (isUnknown(first, fields) || isUnknown(second, fields)) {
            return Optional.of(isUnknown(first, fields) ? second : first);
        }
        Key<?> later = fields.place(first).compareTo(fields.place(second)) > 0 ? first : second;
        fields.tell(
                later,
                "`" + first.name() + "` and `" + second.name() + "` together",
                "one of them: the one you measured");
        return Optional.empty();
    }

    private static boolean isUnknown(Key<?> key, Fields fields) {
        return fields.get(key)
                .filter(value -> value instanceof Answer<?> a && a.toOptional().isEmpty())
                .isPresent();
    }

    /** Whether a key is written for the cloth itself: what it is like stands before it. */
    public static boolean isOwn(Key<?> key, Fields fields) {
        return fields.get(key).isPresent() && fields.place(key).compareTo(fields.place()) >= 0;
    }
}
