package secondbolt.fit.made;

import java.util.List;
import secondbolt.measure.Length;
import secondbolt.wearer.FinishedMeasure;

/**
 * One measure of the finished garment.
 *
 * @param what it is, in words
 * @param measures what it is comparable with; none if no such measure has a name
 * @param before as drawn
 * @param after with the alterations, as the pieces really are
 * @param meeting edges that are taken to meet edge to edge, though no join says so; none for most
 */
public record Made(
        String what,
        List<FinishedMeasure> measures,
        Length before,
        Length after,
        List<String> meeting) {
    /** Copies the lists. */
    public Made {
        measures = List.copyOf(measures);
        meeting = List.copyOf(meeting);
    }

    /** Whether it tells this of the garment. */
    public boolean tells(FinishedMeasure measure) {
        return measures.contains(measure);
    }
}
