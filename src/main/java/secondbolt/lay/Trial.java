package secondbolt.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import secondbolt.fit.Piece;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * One way of laying: as the maker wrote it, or with something let go.
 *
 * @param plan as she wrote it
 * @param gap between two cutting lines
 * @param free pieces that may lie any way
 */
record Trial(LayPlan plan, Length gap, Set<String> free) {
    private static final List<Integer> ANY = List.of(0, 45, 90, 135, 180, 225, 270, 315);

    static Trial asWritten(LayPlan plan) {
        return new Trial(plan, plan.gapOrUsual(), Set.of());
    }

    /** What else can be tried, by the words that tell of it. */
    static Map<String, Trial> others(LayPlan plan, List<LayPiece> pieces, Tape tape) {
        Map<String, Trial> others = new LinkedHashMap<>();
        Length gap = plan.gapOrUsual();
        Length half = gap.dividedBy(2);
        if (gap.isPositive()) {
            others.put(
                    "a gap of " + tape.printSmall(half) + " instead of " + tape.printSmall(gap),
                    new Trial(plan, half, Set.of()));
        }
        Set<String> hidden = new TreeSet<>();
        for (LayPiece piece : pieces) {
            boolean unseen = piece.piece().seen() == Piece.Seen.HIDDEN;
            if (unseen && plan.grain(piece.piece()) != Piece.Grain.ANY) {
                hidden.add(piece.piece().name());
            }
        }
        if (!hidden.isEmpty()) {
            others.put(
                    "the hidden pieces (" + String.join(", ", hidden) + ") at any grain",
                    new Trial(plan, gap, hidden));
        }
        Set<String> small = small(plan, pieces);
        if (!small.isEmpty()) {
            others.put(
                    "the small pieces (" + String.join(", ", small) + ") at any grain",
                    new Trial(plan, gap, small));
        }
        return others;
    }

    /** Pieces of less than a tenth of the largest, seen or not. */
    private static Set<String> small(LayPlan plan, List<LayPiece> pieces) {
        double most = pieces.stream().mapToDouble(p -> p.outline().areaMm2()).max().orElse(0);
        Set<String> small = new TreeSet<>();
        for (LayPiece piece : pieces) {
            if (piece.outline().areaMm2() * 10 < most
                    && plan.grain(piece.piece()) != Piece.Grain.ANY) {
                small.add(piece.piece().name());
            }
        }
        return small;
    }

    /**
     * How a piece may be turned.
     *
     * @param oneWay whether the cloth has a top and a bottom
     */
    List<Integer> turns(Piece piece, boolean oneWay) {
        Piece.Grain grain = free.contains(piece.name()) ? Piece.Grain.ANY : plan.grain(piece);
        List<Integer> turns =
                switch (grain) {
                    case ALONG -> List.of(0, 180);
                    case ACROSS -> List.of(90, 270);
                    case BIAS -> List.of(45, 135, 225, 315);
                    case ANY -> ANY;
                };
        return oneWay ? oneWay(grain, turns) : turns;
    }

    /** With a nap every piece lies with its top up, or aslant, never down. */
    private static List<Integer> oneWay(Piece.Grain grain, List<Integer> turns) {
        if (grain == Piece.Grain.ALONG) {
            return List.of(0);
        }
        List<Integer> kept = new ArrayList<>(turns);
        kept.removeIf(turn -> turn > 90 && turn < 270);
        return kept;
    }
}
