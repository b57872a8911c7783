package secondbolt.cloth;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import secondbolt.garment.Role;
import secondbolt.measure.Area;
import secondbolt.measure.Mass;

/**
 * All cloths of one role. Their areas and masses add up; their clear runs never do.
 *
 * @param role what they are for
 * @param cloths in the order written, at least one
 */
public record ClothStock(Role role, List<ClothResult> cloths) {
    /** Copies the cloths. */
    public ClothStock {
        cloths = List.copyOf(cloths);
    }

    /** The stocks, in the order main, lining, contrast. */
    public static List<ClothStock> of(List<ClothResult> all) {
        Map<Role, List<ClothResult>> byRole = new EnumMap<>(Role.class);
        for (ClothResult result : all) {
            byRole.computeIfAbsent(result.cloth().textile().roleOrMain(), role -> new ArrayList<>())
                    .add(result);
        }
        return byRole.entrySet().stream()
                .map(e -> new ClothStock(e.getKey(), e.getValue()))
                .toList();
    }

    /** The stock a cloth belongs to. */
    static ClothStock of(ClothResult one, List<ClothResult> all) {
        Role role = one.cloth().textile().roleOrMain();
        return of(all).stream().filter(s -> s.role() == role).findFirst().orElseThrow();
    }

    /** As measured and untrimmed; nothing if one size is not known. */
    public Optional<Area> untrimmedArea() {
        return sum(r -> r.cloth().extent().toOptional().map(Extent::area), Area::plus);
    }

    /** Trimmed and washed; nothing if one of them is open. */
    public Optional<Area> soundArea() {
        return sum(r -> r.finished().map(ClothYield::soundArea), Area::plus);
    }

    /** What is not sound; nothing if one of them is open. */
    public Optional<Area> flawedArea() {
        return sum(r -> r.finished().map(ClothYield::flawedArea), Area::plus);
    }

    /** Whole cloths, dry; nothing if one of them is open. */
    public Optional<Mass> mass() {
        return sum(r -> r.heaviness().mass(), Mass::plus);
    }

    private <T> Optional<T> sum(Function<ClothResult, Optional<T>> part, BinaryOperator<T> plus) {
        List<T> parts = cloths.stream().flatMap(r -> part.apply(r).stream()).toList();
        return parts.size() == cloths.size() ? parts.stream().reduce(plus) : Optional.empty();
    }
}
