package secondbolt.lay.stock;

import java.util.List;
import secondbolt.lay.placement.Placement;
import secondbolt.lay.plan.Placing;

/**
 * What became of the pinned places of a stock.
 *
 * @param kept where pieces lie as they are pinned; the numbers of the items are those of the pieces
 * @param misfits what no longer fits where it is pinned, and is laid anew
 * @param near pinned pieces that are nearer to another one than the gap
 */
public record Pinned(List<Placement> kept, List<Misfit> misfits, List<Near> near) {
    /** Nothing is pinned. */
    public static final Pinned NONE = new Pinned(List.of(), List.of(), List.of());

    /** Copies the lists. */
    public Pinned {
        kept = List.copyOf(kept);
        misfits = List.copyOf(misfits);
        near = List.copyOf(near);
    }

    /**
     * A place that is not kept.
     *
     * @param placing as written
     * @param why what rules it out
     * @param other what it reaches into, or must match; empty if that is no piece
     */
    public record Misfit(Placing placing, Why why, String other) {}

    /**
     * A place that is kept, though it is nearer to another piece than the gap.
     *
     * @param placing as written
     * @param other the other piece
     */
    public record Near(Placing placing, String other) {}

    /** What rules out a place. */
    public enum Why {
        /** As many as the pattern has are cut already, or pinned elsewhere. */
        NOT_NEEDED,
        /** The cloth lies in other layers now. */
        LAYERS,
        /** The copies still wanted are of the other hand. */
        HAND,
        /** Its grain, or the nap of the cloth, does not allow its turn. */
        GRAIN,
        /** It does not lie with its fold on that of the cloth, or beside it. */
        FOLD,
        /** It is made of a feature of the cloth, and does not lie along it. */
        FEATURE,
        /** It reaches beyond the edge of the cloth. */
        EDGE,
        /** It lies where something is cut already. */
        CUT,
        /** It lies on a flaw, or on cloth that is good for hidden pieces only. */
        FLAW,
        /** It reaches into another pinned piece. */
        OVERLAP,
        /** The pattern of the cloth does not run on into a piece it is sewn to. */
        MATCH,
        /** The same of a piece that is cut already. */
        MATCH_CUT,
        /** Its cloth has no known size, or nothing sound. */
        CLOTH
    }
}
