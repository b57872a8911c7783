package secondbolt.cloth.yields;

import java.util.Optional;
import secondbolt.file.value.AcrossAlong;
import secondbolt.measure.ClothWeight;
import secondbolt.measure.Mass;
import secondbolt.measure.Share;
import secondbolt.textile.Cloth;
import secondbolt.worksheet.Subject;

/**
 * One cloth worked out.
 *
 * @param name the maker's name for it
 * @param cloth as she wrote it
 * @param left what share of its length is left after the wash, each way; nothing where she does not
 *     know yet
 * @param measured what it yields trimmed but as measured; nothing if its size is not known
 * @param finished what it yields trimmed and washed; nothing if anything it needs is not known
 * @param heaviness how heavy it is
 */
public record ClothResult(
        String name,
        Cloth cloth,
        AcrossAlong<Optional<Share>> left,
        Optional<ClothYield> measured,
        Optional<ClothYield> finished,
        Heaviness heaviness) {
    /**
     * How heavy it is; nothing where it follows from what she does not know.
     *
     * @param mass the whole cloth, dry, untrimmed
     * @param trimmedMass the same once it is trimmed
     * @param weight by area, as measured
     * @param washedWeight by area, once it has drawn in
     */
    public record Heaviness(
            Optional<Mass> mass,
            Optional<Mass> trimmedMass,
            Optional<ClothWeight> weight,
            Optional<ClothWeight> washedWeight) {}

    /** What it yields as far as it can be told: finished, or else as measured. */
    public Optional<ClothYield> best() {
        return finished.or(() -> measured);
    }

    /** The cloth as findings and sheets speak of it. */
    public Subject.Cloth subject() {
        return new Subject.Cloth(name);
    }

    /** Whether it draws in or grows, both ways known. */
    public boolean changes() {
        return left.across().filter(share -> !share.equals(Share.WHOLE)).isPresent()
                || left.along().filter(share -> !share.equals(Share.WHOLE)).isPresent();
    }
}
