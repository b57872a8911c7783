package secondbolt.wearer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The size the maker works in: one, or one for each of several measurements.
 *
 * @param one the label, unless it is blended
 * @param blended labels by measurement; empty unless it is blended
 */
public record ChosenSize(Optional<String> one, Map<BodyMeasure, String> blended) {
    /** Copies the blend and checks that it is either. */
    public ChosenSize {
        blended = Collections.unmodifiableMap(new LinkedHashMap<>(blended));
        if (one.isPresent() != blended.isEmpty()) {
            throw new IllegalArgumentException("one size or a blend, not both or neither");
        }
    }

    /** One size for the whole. */
    public static ChosenSize of(String label) {
        return new ChosenSize(Optional.of(label), Map.of());
    }

    /** A size for each of these measurements. */
    public static ChosenSize blended(Map<BodyMeasure, String> labels) {
        return new ChosenSize(Optional.empty(), labels);
    }

    /** In words: {@code 18}, or {@code bust 18, hip 16}. */
    public String words() {
        return one.orElseGet(
                () ->
                        blended.entrySet().stream()
                                .map(e -> e.getKey().word() + " " + e.getValue())
                                .collect(Collectors.joining(", ")));
    }

    /**
     * The size that holds at a measurement: its own, or that of its height on the body; nothing
     * between two that differ, where the pattern runs from one into the other.
     */
    public Optional<String> at(BodyMeasure measure) {
        Optional<String> named = one.or(() -> Optional.ofNullable(blended.get(measure)));
        return named.or(() -> measure.level().flatMap(this::atLevel));
    }

    private Optional<String> atLevel(int level) {
        List<BodyMeasure> down = trunk();
        Optional<String> above = Optional.empty();
        Optional<String> below = Optional.empty();
        for (BodyMeasure measure : down) {
            int its = measure.level().orElseThrow();
            if (its <= level) {
                above = Optional.of(blended.get(measure));
            }
            if (its >= level && below.isEmpty()) {
                below = Optional.of(blended.get(measure));
            }
        }
        if (above.isEmpty() || below.isEmpty()) {
            return above.isPresent() ? above : below;
        }
        return above.equals(below) ? above : Optional.empty();
    }

    private List<BodyMeasure> trunk() {
        return blended.keySet().stream()
                .filter(BodyMeasure::isRoundTheTrunk)
                .sorted(Comparator.comparing(m -> m.level().orElseThrow()))
                .toList();
    }

    /**
     * What is redrawn where the sizes differ, down the body.
     *
     * @param along the seam it is redrawn along, in words
     */
    public List<String> redraw(String along) {
        List<String> told = new ArrayList<>();
        List<BodyMeasure> down = trunk();
        for (int i = 1; i < down.size(); i++) {
            String above = blended.get(down.get(i - 1));
            String below = blended.get(down.get(i));
            if (!above.equals(below)) {
                told.add(
                        "From the "
                                + down.get(i - 1).word()
                                + " line down to the "
                                + down.get(i).word()
                                + " line redraw from size "
                                + above
                                + " to size "
                                + below
                                + " along "
                                + along
                                + ", on every piece with that seam, its facing and lining too.");
            }
        }
        blended.forEach(
                (measure, label) -> {
                    if (!measure.isRoundTheTrunk()) {
                        told.add(
                                "For the "
                                        + measure.word()
                                        + " take size "
                                        + label
                                        + " on every piece it goes over, and on what is sewn to"
                                        + " them there.");
                    }
                });
        return List.copyOf(told);
    }
}
