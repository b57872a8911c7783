package secondbolt.cloth.yields;

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
import secondbolt.textile.extent.Extent;

/**
 * All cloths of one role. Their areas and masses add up; their clear runs never do.
 *
 * @param role what they are for
 * @param cloths in the order written, at least one
 * @param untrimmedArea as measured and untrimmed; nothing if one size is not known
 * @param soundArea trimmed and washed; nothing if one of them is open
 * @param flawedArea what is not sound; nothing if one of them is open
 * @param mass whole cloths, dry; nothing if one of them is open
 */
public record ClothStock(
        Role role,
        List<ClothResult> cloths,
        Optional<Area> untrimmedArea,
        Optional<Area> soundArea,
        Optional<Area> flawedArea,
        Optional<Mass> mass) {
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
        return byRole.entrySet().stream().map(e -> of(e.getKey(), e.getValue())).toList();
    }

    private static ClothStock of(Role role, List<ClothResult> cloths) {
        return new ClothStock(
                role,
                cloths,
                sum(cloths, r -> r.cloth().extent().toOptional().map(Extent::area), Area::plus),
                sum(cloths, r -> r.finished().map(ClothYield::soundArea), Area::plus),
                sum(cloths, r -> r.finished().map(ClothYield::flawedArea), Area::plus),
                sum(cloths, r -> r.heaviness().mass(), Mass::plus));
    }

    private static <T> Optional<T> sum(
            List<ClothResult> cloths,
            Function<ClothResult, Optional<T>> part,
            BinaryOperator<T> plus) {
        List<T> parts = cloths.stream().flatMap(r -> part.apply(r).stream()).toList();
        return parts.size() == cloths.size() ? parts.stream().reduce(plus) : Optional.empty();
    }
}
