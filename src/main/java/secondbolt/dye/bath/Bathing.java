package secondbolt.dye.bath;

import java.util.List;
import java.util.Optional;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.measure.Volume;

/**
 * How what is dyed is shared out.
 *
 * @param ratio how many times the dry mass the bath has
 * @param parts what cannot be shared out further; none if what it weighs is not known
 * @param loads one bath each; none if a part is too large, or a machine takes its own water
 * @param tooLarge the largest part, if the vessel does not hold it
 */
public record Bathing(
        Share ratio, List<Part> parts, List<Load> loads, Optional<TooLarge> tooLarge) {
    /** Copies the lists. */
    public Bathing {
        parts = List.copyOf(parts);
        loads = List.copyOf(loads);
    }

    /**
     * A part that the vessel does not hold.
     *
     * @param part which
     * @param needs how much bath it needs
     */
    public record TooLarge(Part part, Volume needs) {}

    /** What goes in weighs dry; nothing if that is not known. */
    public Optional<Mass> dry() {
        return parts.isEmpty() ? Optional.empty() : Optional.of(Load.sum(parts, Part::dry));
    }

    /** How much of that is fibre that takes; nothing if that is not known. */
    public Optional<Mass> takes() {
        return parts.isEmpty() ? Optional.empty() : Optional.of(Load.sum(parts, Part::takes));
    }

    /** All baths together. */
    public Optional<Volume> bath() {
        return loads.stream().map(Load::bath).reduce(Volume::plus);
    }
}
