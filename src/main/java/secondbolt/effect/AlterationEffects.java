package secondbolt.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.figure.Difference;
import secondbolt.figure.Figure;
import secondbolt.measure.Area;
import secondbolt.measure.Length;

/**
 * What one alteration changes beyond those before it.
 *
 * @param words what the alteration is called
 * @param lengths that changed by a hundredth of a millimetre or more
 * @param areas that changed
 */
record AlterationEffects(String words, List<Change<Length>> lengths, List<Change<Area>> areas) {
    /** Computed lengths that differ by less are the same. */
    private static final Length SAME = Length.ofMillimetres(1).dividedBy(100);

    AlterationEffects {
        lengths = List.copyOf(lengths);
        areas = List.copyOf(areas);
    }

    /**
     * A change.
     *
     * @param what changed
     * @param before without the alteration
     * @param after with it
     */
    record Change<T>(String what, T before, T after) {}

    /** The lengths and areas among what differs. */
    static AlterationEffects of(String words, List<Difference> differences) {
        List<Change<Length>> lengths = new ArrayList<>();
        List<Change<Area>> areas = new ArrayList<>();
        for (Difference difference : differences) {
            String what = String.join(", ", difference.path());
            change(what, difference, Measured.LENGTH)
                    .filter(c -> !c.after().minus(c.before()).size().isShorterThan(SAME))
                    .ifPresent(lengths::add);
            change(what, difference, Measured.AREA).ifPresent(areas::add);
        }
        return new AlterationEffects(words, lengths, areas);
    }

    private static <T> Optional<Change<T>> change(
            String what, Difference difference, Figure.Visitor<Optional<T>> kind) {
        return difference
                .before()
                .flatMap(figure -> figure.accept(kind))
                .flatMap(
                        before ->
                                difference
                                        .after()
                                        .flatMap(figure -> figure.accept(kind))
                                        .map(after -> new Change<>(what, before, after)));
    }
}
