package secondbolt.dye.bath;

import java.util.List;
import java.util.function.Function;
import secondbolt.measure.Mass;
import secondbolt.measure.Volume;

/**
 * What goes into one bath.
 *
 * @param parts what lies in it
 * @param bath how much bath it has
 */
public record Load(List<Part> parts, Volume bath) {
    /** Copies the list. */
    public Load {
        parts = List.copyOf(parts);
    }

    /** What it weighs dry. */
    public Mass dry() {
        return sum(parts, Part::dry);
    }

    /** How much of that is fibre that takes. */
    public Mass takes() {
        return sum(parts, Part::takes);
    }

    /** What bath and wet cloth weigh together, a litre of bath taken as a kilogram (derived). */
    public Mass weighs() {
        return dry().plus(Mass.KILOGRAM.times(bath.of(Volume.LITRE)));
    }

    /** What lies in it, in words. */
    public String words() {
        return String.join(", ", parts.stream().map(Part::name).toList());
    }

    static Mass sum(List<Part> parts, Function<Part, Mass> part) {
        return parts.stream().map(part).reduce(Mass.ZERO, Mass::plus);
    }
}
