package secondbolt.lay.design;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import secondbolt.cutting.line.CuttingResult;
import secondbolt.garment.Role;
import secondbolt.lay.piece.FoldedPieces;
import secondbolt.lay.piece.Halves;
import secondbolt.lay.piece.LayPiece;
import secondbolt.lay.plan.LayPlan;
import secondbolt.lay.stock.StockLay;
import secondbolt.lay.stock.Trial;
import secondbolt.measure.Tape;
import secondbolt.pattern.piece.Piece;

/**
 * What could help where not all pieces fit, tried quickly: only what is missing is laid anew, on
 * what is left of the cloth.
 */
final class LayRemedies {
    /** Lays single copies, none of which is cut yet, once more. */
    @FunctionalInterface
    interface Again {
        /** What comes of it. */
        StockLay lay(List<LayPiece> wanted, Trial trial);
    }

    /** More panels than that is patchwork; common practice, no source. */
    private static final int MOST_PANELS = 4;

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
     * @param missing the single copies that are not cut yet
     */
    List<LayResult.Remedy> of(StockLay stock, List<LayPiece> missing, Again again) {
        List<LayResult.Remedy> remedies = new ArrayList<>();
        Trial.others(plan, stock, missing, tape)
                .forEach(
                        (words, trial) ->
                                remedies.add(
                                        remedy(stock.role(), words, again.lay(missing, trial))));
        remedies.addAll(parted(stock, missing, LayPiece::isHidden, again));
        Set<String> left = new TreeSet<>();
        stock.leftOver().stream()
                .filter(piece -> !piece.isHidden())
                .forEach(piece -> left.add(piece.piece().name()));
        remedies.addAll(
                parted(stock, missing, piece -> left.contains(piece.piece().name()), again));
        return remedies;
    }

    /**
     * In two parts across; and in two down, or in three or four where that is still too wide, if
     * that helps.
     */
    private List<LayResult.Remedy> parted(
            StockLay stock, List<LayPiece> missing, Predicate<LayPiece> isParted, Again again) {
        List<LayPiece> whole =
                missing.stream().filter(isParted).filter(piece -> !stock.isKept(piece)).toList();
        List<LayResult.Remedy> remedies = new ArrayList<>();
        parted(stock, missing, whole, Halves.Seams.ACROSS, 2, again).ifPresent(remedies::add);
        for (int count = 2; count <= MOST_PANELS; count++) {
            Optional<LayResult.Remedy> panels =
                    parted(stock, missing, whole, Halves.Seams.DOWN, count, again);
            boolean helps = panels.filter(remedy -> remedy.leftOver().isEmpty()).isPresent();
            if (helps) {
                remedies.add(panels.orElseThrow());
            }
            if (helps || panels.isEmpty() || !isTooWide(stock, whole, count)) {
                break;
            }
        }
        return remedies;
    }

    private Optional<LayResult.Remedy> parted(
            StockLay stock,
            List<LayPiece> missing,
            List<LayPiece> whole,
            Halves.Seams seams,
            int count,
            Again again) {
        double allowanceMm = cutting.allowance().millimetres();
        List<LayPiece> parted = Halves.of(missing, whole::contains, seams, count, allowanceMm);
        if (parted.size() == missing.size()) {
            return Optional.empty();
        }
        return Optional.of(
                remedy(
                        stock.role(),
                        words(whole, missing) + how(whole, seams, count),
                        again.lay(parted, Trial.asWritten(plan, stock.role(), parted))));
    }

    /** Whether a panel of one of them is wider than every cloth, however it may be turned. */
    private boolean isTooWide(StockLay stock, List<LayPiece> whole, int count) {
        double widestMm =
                stock.spreads().stream()
                        .mapToDouble(spread -> spread.soundForHidden().box().widthMm())
                        .max()
                        .orElse(0);
        return whole.stream()
                .filter(piece -> plan.grain(piece.piece()) == Piece.Grain.ALONG)
                .mapToDouble(piece -> piece.outline().box().widthMm() / count)
                .anyMatch(widthMm -> widthMm + cutting.allowance().millimetres() > widestMm);
    }

    /** The pieces by name; by copy where others of it are cut already. */
    private static String words(List<LayPiece> whole, List<LayPiece> missing) {
        Set<String> words = new LinkedHashSet<>();
        for (LayPiece piece : whole) {
            long copies =
                    missing.stream()
                            .filter(p -> p.piece().name().equals(piece.piece().name()))
                            .count();
            words.add(copies < piece.of() ? piece.words() : piece.piece().name());
        }
        return String.join(", ", words);
    }

    /** What is done to them; of one grain it is said how the seams run to it. */
    private String how(List<LayPiece> whole, Halves.Seams seams, int count) {
        if (seams == Halves.Seams.ACROSS) {
            return " in two parts, with a seam across";
        }
        boolean isAlong =
                whole.stream().allMatch(piece -> plan.grain(piece.piece()) == Piece.Grain.ALONG);
        String way = isAlong ? " along the grain" : " down the piece";
        return count == 2
                ? " in two parts, with a centre seam" + way + written(whole)
                : " in " + count + " panels, with seams" + way;
    }

    /** What to write for it: a piece on an upright fold becomes a pair of its halves as drawn. */
    private static String written(List<LayPiece> whole) {
        boolean isOnFold =
                whole.stream()
                        .allMatch(
                                piece ->
                                        piece.of() == 1
                                                && piece.piece().cuts().size() == 1
                                                && FoldedPieces.isOnUprightFold(piece));
        return isOnFold ? " (write it with `cut: pair` and without `fold`)" : "";
    }

    private static LayResult.Remedy remedy(Role role, String words, StockLay tried) {
        return new LayResult.Remedy(
                role, words, tried.leftOver().stream().map(LayPiece::words).toList());
    }
}
