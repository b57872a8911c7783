package secondbolt.lay.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import secondbolt.cloth.ClothYield;
import secondbolt.garment.PieceEdge;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.search.Bed;
import secondbolt.lay.search.Effort;
import secondbolt.lay.search.Figure;
import secondbolt.lay.search.Lay;
import secondbolt.lay.search.Way;

/** Lays pieces on a stock of cloth, with their stripes or checks matched. */
public final class StockSearch {
    private static final int SOUND = 0;
    private static final int HIDDEN = 1;
    private static final int FIRST_KEPT = 2;

    private final KeptLays lays;
    private final Stock stock;
    private final List<LayPiece> wanted;
    private final Trial trial;
    private final Effort effort;
    private final Matching matching;

    private StockSearch(
            KeptLays lays, Stock stock, List<LayPiece> wanted, Trial trial, Effort effort) {
        this.lays = lays;
        this.stock = stock;
        this.wanted = List.copyOf(wanted);
        this.trial = trial;
        this.effort = effort;
        Optional<Spread> first = repeating().mapToObj(stock.spreads()::get).findFirst();
        this.matching =
                trial.matches().isEmpty() || first.isEmpty()
                        ? Matching.NONE
                        : Matching.of(trial, this.wanted, first.get().repeat());
    }

    private IntStream repeating() {
        return IntStream.range(0, stock.spreads().size())
                .filter(i -> stock.spreads().get(i).repeat().isAny());
    }

    /**
     * What came of it.
     *
     * @param lay the numbers of its figures are those of the pieces
     * @param matching which pieces had to match
     */
    public record Found(Lay lay, Matching matching) {}

    /**
     * Lays pieces.
     *
     * @param wanted single copies, or doubled for folded cloth
     */
    public static Found search(
            KeptLays lays, Stock stock, List<LayPiece> wanted, Trial trial, Effort effort) {
        if (wanted.isEmpty() || stock.spreads().isEmpty()) {
            List<Integer> all = IntStream.range(0, wanted.size()).boxed().toList();
            return new Found(new Lay(List.of(), all, true), Matching.NONE);
        }
        return new StockSearch(lays, stock, wanted, trial, effort).search();
    }

    private Found search() {
        List<Phase> phases = phases();
        Optional<Lay> best = Optional.empty();
        for (Phase phase : phases) {
            Lay lay = lay(phase);
            if (best.isEmpty() || worth(lay) > worth(best.get())) {
                best = Optional.of(lay);
            }
            if (lay.leftOver().isEmpty()) {
                break;
            }
        }
        return new Found(best.orElseThrow(), matching);
    }

    private double worth(Lay lay) {
        return lay.placed().stream().mapToDouble(p -> worth(wanted.get(p.figure()))).sum();
    }

    /** A piece nobody sees can be cut of another cloth: it is the first to be left out. */
    private static double worth(LayPiece piece) {
        double area = piece.areaMm2();
        return piece.isHidden() ? area / 10 : area;
    }

    private Lay lay(Phase phase) {
        List<Bed> beds = stock.beds();
        List<PieceEdge> kept = stock.keptEdges();
        Ways ways = new Ways(stock, trial);
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < wanted.size(); i++) {
            LayPiece piece = wanted.get(i);
            List<Way> all = matching.isMatched(i) ? phase.ways(i) : ways.of(piece);
            figures.add(new Figure(piece.outline(), all, grade(piece, kept), worth(piece)));
        }
        return lays.lay(figures, beds, trial.gap().millimetres(), effort);
    }

    private int grade(LayPiece piece, List<PieceEdge> kept) {
        for (int i = 0; i < kept.size(); i++) {
            if (Ways.isOf(piece, kept.get(i))) {
                return FIRST_KEPT + i;
            }
        }
        return trial.mayLieOnHidden(piece) ? HIDDEN : SOUND;
    }

    /**
     * How the pattern lies under the matched pieces: their largest in the corner of a cloth, or
     * half a repeat from it. Pieces that match lie on one cloth, unless it is told where the
     * pattern begins on each.
     */
    private List<Phase> phases() {
        if (!matching.isAny()) {
            return List.of(new Phase(stock, matching, 0, List.of(), 0));
        }
        List<Integer> alike = repeating().filter(this::isLikeTheFirst).boxed().toList();
        boolean told =
                alike.stream().allMatch(i -> stock.spreads().get(i).repeat().begins().isPresent());
        List<Phase> phases = new ArrayList<>();
        for (double share : List.of(0.0, 0.5)) {
            if (told) {
                phases.add(new Phase(stock, matching, alike.get(0), alike, share));
            } else {
                alike.forEach(
                        bed -> phases.add(new Phase(stock, matching, bed, List.of(bed), share)));
            }
        }
        return phases;
    }

    private boolean isLikeTheFirst(int spread) {
        ClothYield.Repeat one = stock.spreads().get(spread).repeat();
        ClothYield.Repeat first = matching.repeat();
        return Math.abs(one.acrossMm() - first.acrossMm()) < 0.5
                && Math.abs(one.alongMm() - first.alongMm()) < 0.5;
    }
}
