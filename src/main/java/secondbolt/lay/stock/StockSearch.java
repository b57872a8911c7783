package secondbolt.lay.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.garment.PieceEdge;
import secondbolt.lay.kept.LayCache;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.placement.Container;
import secondbolt.lay.placement.Effort;
import secondbolt.lay.placement.Goal;
import secondbolt.lay.placement.Lay;
import secondbolt.lay.placement.PackingItem;
import secondbolt.lay.placement.PlacementRule;

/** Lays pieces on a stock of cloth, with their stripes or checks matched. */
public final class StockSearch {
    private static final int SOUND = 0;
    private static final int HIDDEN = 1;
    private static final int FIRST_KEPT = 2;

    private final LayCache lays;
    private final Stock stock;
    private final List<LayPiece> wanted;
    private final Trial trial;
    private final Effort effort;
    private final Goal goal;
    private final Matching matching;

    private StockSearch(
            LayCache lays,
            Stock stock,
            List<LayPiece> wanted,
            Trial trial,
            Effort effort,
            Goal goal) {
        this.lays = lays;
        this.stock = stock;
        this.wanted = List.copyOf(wanted);
        this.trial = trial;
        this.effort = effort;
        this.goal = goal;
        this.matching = Matching.of(trial, this.wanted, stock);
    }

    /**
     * Lays pieces.
     *
     * @param wanted single copies, or as they are cut from folded cloth
     * @param goal what the lay should be like once all are placed
     */
    public static Lay search(
            LayCache lays,
            Stock stock,
            List<LayPiece> wanted,
            Trial trial,
            Effort effort,
            Goal goal) {
        if (wanted.isEmpty() || stock.spreads().isEmpty()) {
            List<Integer> all = IntStream.range(0, wanted.size()).boxed().toList();
            return new Lay(List.of(), all, true);
        }
        return new StockSearch(lays, stock, wanted, trial, effort, goal).search();
    }

    private Lay search() {
        List<RepeatPhase> phases = phases();
        Optional<Lay> best = Optional.empty();
        for (RepeatPhase phase : phases) {
            Lay lay = lay(phase);
            if (best.isEmpty() || worth(lay) > worth(best.get())) {
                best = Optional.of(lay);
            }
            if (lay.leftOver().isEmpty()) {
                break;
            }
        }
        return best.orElseThrow();
    }

    private double worth(Lay lay) {
        return lay.placements().stream().mapToDouble(p -> worth(wanted.get(p.item()))).sum();
    }

    /** A piece nobody sees can be cut of another cloth: it is the first to be left out. */
    private static double worth(LayPiece piece) {
        double area = piece.areaMm2();
        return piece.isHidden() ? area / 10 : area;
    }

    private Lay lay(RepeatPhase phase) {
        List<Container> containers = stock.containers();
        List<PieceEdge> kept = stock.keptEdges();
        PlacementRules rules = new PlacementRules(stock, trial);
        List<PackingItem> items = new ArrayList<>();
        for (int i = 0; i < wanted.size(); i++) {
            LayPiece piece = wanted.get(i);
            List<PlacementRule> all = matching.isMatched(i) ? phase.rules(i) : rules.of(piece);
            items.add(new PackingItem(piece.outline(), all, grade(piece, kept), worth(piece)));
        }
        return lays.lay(items, containers, trial.gap().millimetres(), effort, goal);
    }

    /** Which grade of a container a piece may lie on. */
    static int grade(LayPiece piece, List<PieceEdge> kept) {
        for (int i = 0; i < kept.size(); i++) {
            if (PlacementRules.isOf(piece, kept.get(i))) {
                return FIRST_KEPT + i;
            }
        }
        return piece.isHidden() ? HIDDEN : SOUND;
    }

    /**
     * How the pattern lies under the matched pieces: their largest in the corner of a cloth, or
     * half a repeat from it. Pieces that match lie on one cloth, unless it is told where the
     * pattern begins on each.
     */
    private List<RepeatPhase> phases() {
        if (!matching.isAny()) {
            return List.of(new RepeatPhase(stock, matching, 0, List.of(), 0));
        }
        List<Integer> alike = stock.patterned();
        List<RepeatPhase> phases = new ArrayList<>();
        for (double share : List.of(0.0, 0.5)) {
            if (stock.isTold()) {
                phases.add(new RepeatPhase(stock, matching, alike.get(0), alike, share));
            } else {
                alike.forEach(
                        number ->
                                phases.add(
                                        new RepeatPhase(
                                                stock, matching, number, List.of(number), share)));
            }
        }
        return phases;
    }
}
