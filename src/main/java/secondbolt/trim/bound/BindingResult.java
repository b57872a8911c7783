package secondbolt.trim.bound;

import java.util.List;
import java.util.Optional;
import secondbolt.garment.PieceEdge;
import secondbolt.measure.Length;
import secondbolt.shape.Box;
import secondbolt.trim.plan.Binding;
import secondbolt.trim.plan.CountedEdge;
import secondbolt.trim.strip.StripCut;

/**
 * A binding worked out.
 *
 * @param name the maker's name for it
 * @param binding as she wrote it
 * @param edges each edge it is sewn to
 * @param width how wide its strip is cut; nothing if its finished width is not known
 * @param sewn how long the edges are together, after the alterations
 * @param forCurves what is added for curves
 * @param forEnds what is added for the join of its ends
 * @param remnant of what its strip is cut; nothing if it is bought, or nothing stays over
 */
public record BindingResult(
        String name,
        Binding binding,
        List<BoundEdge> edges,
        Optional<Length> width,
        Length sewn,
        Length forCurves,
        Length forEnds,
        Optional<FromRemnant> remnant) {
    /** Copies the edges. */
    public BindingResult {
        edges = List.copyOf(edges);
    }

    /**
     * An edge that is bound.
     *
     * @param edge which
     * @param count how often it is counted
     * @param rounds how often the garment has it
     * @param sewn how long it is, once
     * @param bends how it bends
     * @param allowance what of cloth lies outside its line, or inside it if the outline has it
     * @param isOpen whether it is not known if the alterations changed it
     */
    public record BoundEdge(
            PieceEdge edge,
            int count,
            int rounds,
            Length sewn,
            Bends bends,
            Length allowance,
            boolean isOpen)
            implements CountedEdge {}

    /** How an edge bends. */
    public enum Bends {
        /** Not at all. */
        NOT,
        /** It is curved. */
        CURVED,
        /** Known by tape only. */
        UNKNOWN
    }

    /**
     * What the lay leaves, and the strips in it.
     *
     * @param cloth the name of the cloth
     * @param box what is left of it for this binding and those after it
     * @param isSettled whether every piece found its place, so that it is really left
     * @param cut the strips; nothing if their width is not known
     */
    public record FromRemnant(String cloth, Box box, boolean isSettled, Optional<StripCut> cut) {}

    /** How long the strip must be in all. */
    public Length need() {
        return sewn.plus(forCurves).plus(forEnds);
    }

    /** Its strips, if they are cut from what stays over. */
    public Optional<StripCut> cut() {
        return remnant.flatMap(FromRemnant::cut);
    }
}
