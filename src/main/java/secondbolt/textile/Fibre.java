package secondbolt.textile;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import secondbolt.measure.Share;

/**
 * What a cloth is made of.
 *
 * @param shares the share of each fibre, in the order written; they add up to the whole
 */
public record Fibre(Map<String, Share> shares) {
    /** Copies the shares. */
    public Fibre {
        shares = Collections.unmodifiableMap(new LinkedHashMap<>(shares));
    }

    /** All of one fibre. */
    public static Fibre pure(String name) {
        return new Fibre(Map.of(name, Share.WHOLE));
    }

    /** Whether it has more than one fibre. */
    public boolean isBlend() {
        return shares.size() > 1;
    }

    /** Whether one of its fibres' names holds one of these words. */
    public boolean hasAny(Collection<String> words) {
        return shares.keySet().stream()
                .map(name -> name.toLowerCase(Locale.ROOT))
                .anyMatch(name -> words.stream().anyMatch(name::contains));
    }

    /** {@code cotton}, or {@code cotton 65 %, polyester 35 %}. */
    public String words() {
        return isBlend()
                ? shares.entrySet().stream()
                        .map(e -> e.getKey() + " " + e.getValue().percent(1))
                        .collect(Collectors.joining(", "))
                : String.join("", shares.keySet());
    }
}
