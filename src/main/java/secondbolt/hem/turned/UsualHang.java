package secondbolt.hem.turned;

import java.util.Collection;
import java.util.List;
import secondbolt.hem.plan.Hem;
import secondbolt.pattern.piece.Piece;
import secondbolt.textile.Cloth;

/** Whether a hem hangs before it is levelled where the maker does not say, and how long. */
final class UsualHang {
    /** From here on a hem counts as flared: a quarter of a circle all round. */
    private static final double FLARED_RADIANS = Math.PI / 2 - 1e-6;

    private UsualHang() {}

    /**
     * How long it hangs.
     *
     * @param told what she says
     * @param edges of the hem
     * @param cloths all there are; of heavy ones more is asked
     */
    static Hem.Hang of(Hem.Hang told, List<HemEdge> edges, Collection<Cloth> cloths) {
        return told.equals(Hem.Hang.BY_CLOTH) && HeavyCloth.isAny(edges, cloths)
                ? Hem.Hang.HEAVY
                : told;
    }

    /** By the grain and the shape. */
    static Hem.Hang byShape(List<HemEdge> edges) {
        boolean isBias = edges.stream().anyMatch(e -> e.piece().grain() == Piece.Grain.BIAS);
        return isBias || isFlared(edges) ? Hem.Hang.BY_CLOTH : Hem.Hang.NOT;
    }

    /** Whether its panels spread by a quarter of a circle or more, drawn round or straight. */
    static boolean isFlared(List<HemEdge> edges) {
        return edges.stream().mapToDouble(HemEdge::spreadsAllRound).sum() >= FLARED_RADIANS;
    }
}
