package secondbolt.lay.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.garment.Role;
import secondbolt.lay.piece.Halves;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.plan.LayPlan;
import secondbolt.lay.stock.StockLay;
import secondbolt.lay.stock.Trial;
import secondbolt.measure.Tape;

/** What could help where not all pieces fit, tried quickly. */
final class LayRemedies {
    /** Lays wanted single copies once more. */
    @FunctionalInterface
    interface Again {
        /** What comes of it. */
        StockLay lay(List<LayPiece> wanted, Trial trial);
    }

    private final LayPlan plan;
    private final CuttingResult cutting;
    private final Tape tape;

    LayRemedies(LayPlan plan, CuttingResult cutting, Tape tape) {
        this.plan = plan;
        this.cutting = cutting;
        this.tape = tape;
    }

    /**
     * All remedies for a lay that not all pieces fit in.
     *
     * @param stock what did not fit
     * @param wanted single copies
     */
    List<LayResult.Remedy> of(StockLay stock, List<LayPiece> wanted, Again again) {
        List<LayResult.Remedy> remedies = new ArrayList<>();
        for (Map.Entry<String, Trial> trial : Trial.others(plan, stock, wanted, tape).entrySet()) {
            remedies.add(remedy(stock.role(), trial.getKey(), again.lay(wanted, trial.getValue())));
        }
        remedies.addAll(parted(stock, wanted, LayPiece::isHidden, "the hidden pieces", again));
        Set<String> left = new TreeSet<>();
        stock.leftOver().stream()
                .filter(piece -> !piece.isHidden())
                .forEach(piece -> left.add(piece.piece().name()));
        remedies.addAll(
                parted(
                        stock,
                        wanted,
                        piece -> left.contains(piece.piece().name()),
                        String.join(", ", left),
                        again));
        return remedies;
    }

    private List<LayResult.Remedy> parted(
            StockLay stock,
            List<LayPiece> wanted,
            Predicate<LayPiece> isParted,
            String which,
            Again again) {
        List<LayPiece> parted =
                Halves.of(
                        wanted,
                        piece -> isParted.test(piece) && !stock.isKept(piece),
                        cutting.allowance().millimetres());
        return parted.size() > wanted.size()
                ? List.of(
                        remedy(
                                stock.role(),
                                which + " in two parts, with a seam across",
                                again.lay(parted, Trial.asWritten(plan, stock.role(), parted))))
                : List.of();
    }

    private static LayResult.Remedy remedy(Role role, String words, StockLay tried) {
        return new LayResult.Remedy(
                role, words, tried.leftOver().stream().map(LayPiece::words).toList());
    }
}
