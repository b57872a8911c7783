package secondbolt.dye.bath;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import secondbolt.dye.plan.DyePlan;
import secondbolt.dye.take.ClothUptake;
import secondbolt.garment.Role;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;

/**
 * What of a colour cannot be shared out further, and what each part weighs.
 *
 * @param plan as written
 * @param cloths that get it
 * @param pieces of the pattern
 */
record DyeParts(DyePlan plan, List<DyedCloth> cloths, PieceParts pieces) {
    /** The parts; none if what one of them weighs, or what of it takes, is not known. */
    List<Part> parts() {
        if (cloths.isEmpty() || cloths.stream().anyMatch(cloth -> cloth.uptake().isEmpty())) {
            return List.of();
        }
        return switch (plan.whenOrBefore()) {
            case BEFORE_CUTTING -> scaled(wholes());
            case AFTER_CUTTING -> scaled(groups());
            case AFTER_SEWING -> garment();
        };
    }

    private List<Part> wholes() {
        List<Part> parts =
                cloths.stream()
                        .flatMap(cloth -> cloth.mass().map(mass -> part(cloth, mass)).stream())
                        .toList();
        return parts.size() == cloths.size() ? parts : List.of();
    }

    private static Part part(DyedCloth cloth, Mass mass) {
        Share taking = cloth.uptake().map(ClothUptake::taking).orElseThrow();
        return new Part(cloth.name(), mass, mass.times(taking));
    }

    private List<Part> groups() {
        Optional<ClothWeight> weight = weight();
        Optional<Share> taking = taking();
        if (weight.isEmpty() || taking.isEmpty()) {
            return List.of();
        }
        return pieces.groups(roles()).stream()
                .map(
                        group ->
                                new Part(
                                        String.join(", ", group.pieces()),
                                        weight.get().times(group.area()),
                                        weight.get().times(group.area()).times(taking.get())))
                .toList();
    }

    private Set<Role> roles() {
        return cloths.stream()
                .map(cloth -> cloth.cloth().cloth().textile().roleOrMain())
                .collect(Collectors.toSet());
    }

    /** The weight of all cloths once washed, if it is one. */
    private Optional<ClothWeight> weight() {
        return one(cloths.stream().map(cloth -> cloth.cloth().heaviness().washedWeight()).toList())
                .flatMap(weight -> weight);
    }

    /** The share of all cloths that takes, if it is one. */
    private Optional<Share> taking() {
        return one(cloths.stream().map(c -> c.uptake().orElseThrow().taking()).toList());
    }

    private static <T> Optional<T> one(List<T> values) {
        return values.stream().distinct().count() == 1
                ? Optional.of(values.get(0))
                : Optional.empty();
    }

    /** A garment is one part: what she weighed, or else all its pieces. */
    private List<Part> garment() {
        List<Part> groups = groups();
        Optional<Mass> dry =
                plan.mass()
                        .or(
                                () ->
                                        groups.isEmpty()
                                                ? Optional.empty()
                                                : Optional.of(Load.sum(groups, Part::dry)));
        return dry.flatMap(
                        mass ->
                                taking().map(
                                                share ->
                                                        new Part(
                                                                "the garment",
                                                                mass,
                                                                mass.times(share))))
                .map(List::of)
                .orElse(List.of());
    }

    /** As reckoned, or in the same parts of what she weighed. */
    private List<Part> scaled(List<Part> reckoned) {
        if (plan.mass().isEmpty()) {
            return reckoned;
        }
        Mass weighed = plan.mass().get();
        if (reckoned.isEmpty()) {
            String names = String.join(", ", plan.names());
            return taking().map(share -> List.of(new Part(names, weighed, weighed.times(share))))
                    .orElse(List.of());
        }
        Mass sum = Load.sum(reckoned, Part::dry);
        return reckoned.stream()
                .map(
                        part ->
                                new Part(
                                        part.name(),
                                        weighed.times(part.dry().of(sum)),
                                        weighed.times(part.takes().of(sum))))
                .toList();
    }
}
