package secondbolt.textile.fibre;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import secondbolt.measure.Share;

/**
 * What a cloth is made of.
 *
 * @param shares the share of each fibre, in the order written; they add up to the whole
 */
public record Fibre(Map<FibreKind, Share> shares) {
    private static final Share NONE = Share.ofPercent(0);

    /** Copies the shares. */
    public Fibre {
        shares = Collections.unmodifiableMap(new LinkedHashMap<>(shares));
    }

    /** All of one fibre. */
    public static Fibre pure(FibreKind kind) {
        return new Fibre(Map.of(kind, Share.WHOLE));
    }

    /** Whether it has more than one fibre. */
    public boolean isBlend() {
        return shares.size() > 1;
    }

    /** Whether one of its fibres is like that. */
    public boolean hasAny(Predicate<FibreKind> like) {
        return shares.keySet().stream().anyMatch(like);
    }

    /** How much of it is like that; nothing to the whole. */
    public Share shareOf(Predicate<FibreKind> like) {
        return shares.entrySet().stream()
                .filter(entry -> like.test(entry.getKey()))
                .map(Map.Entry::getValue)
                .reduce(NONE, Share::plus);
    }

    /** {@code cotton}, or {@code cotton 65 %, polyester 35 %}. */
    public String words() {
        return isBlend()
                ? shares.entrySet().stream()
                        .map(e -> e.getKey().word() + " " + e.getValue().percent(1))
                        .collect(Collectors.joining(", "))
                : shares.keySet().stream().map(FibreKind::word).collect(Collectors.joining());
    }
}
