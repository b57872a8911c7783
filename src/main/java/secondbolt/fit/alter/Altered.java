package secondbolt.fit.alter;

import java.util.List;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.pattern.Alteration;

/**
 * What one alteration came to, beyond the ones before it.
 *
 * @param alteration as written
 * @param changes the edges whose length it changed
 * @param open the taped edges of which it is not known whether it changes them
 * @param asked what it asks of the pieces
 */
public record Altered(
        Alteration alteration, List<Change> changes, List<PieceEdge> open, PieceChanges asked) {
    /** Copies the lists. */
    public Altered {
        changes = List.copyOf(changes);
        open = List.copyOf(open);
    }

    /**
     * An edge that changed.
     *
     * @param edge which
     * @param before its length before this alteration, as drawn
     * @param after its length after it
     */
    public record Change(PieceEdge edge, Length before, Length after) {}
}
