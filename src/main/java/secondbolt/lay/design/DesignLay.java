package secondbolt.lay.design;

import java.util.List;
import java.util.Optional;
import secondbolt.garment.Role;
import secondbolt.lay.plan.Design;
import secondbolt.lay.stock.Pinned;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Length;

/**
 * A design worked out.
 *
 * @param name the maker's name for it
 * @param design as she wrote it; nothing if the file tells of none and all pieces are meant
 * @param stocks its lays on the cloths there are, by role
 * @param remnants what stays over of each of these cloths
 * @param bolts what it would take from the bolt
 * @param crossed pieces that cannot be laid, because their cutting line crosses itself
 */
public record DesignLay(
        String name,
        Optional<Design> design,
        List<StockLay> stocks,
        Remnants remnants,
        List<BoltLength> bolts,
        List<String> crossed) {
    /** Copies the lists. */
    public DesignLay {
        stocks = List.copyOf(stocks);
        bolts = List.copyOf(bolts);
        crossed = List.copyOf(crossed);
    }

    /** Whether every piece found a place. */
    public boolean fits() {
        return crossed.isEmpty() && stocks.stream().allMatch(StockLay::fits);
    }

    /** Whether its envelope says what is needed, of any width. */
    public boolean hasPrintedNeed() {
        return design.filter(told -> !told.printedNeed().isEmpty()).isPresent();
    }

    /** What its envelope says is needed of a bolt; it tells of the main cloth only. */
    public Optional<Length> printedNeed(BoltLength bolt) {
        return design.filter(told -> bolt.role() == Role.MAIN)
                .map(told -> told.printedNeed().get(bolt.width()));
    }

    /** Whether it makes every piece that another one makes. */
    boolean hasAllOf(DesignLay smaller) {
        return design.isPresent()
                && smaller.design.isPresent()
                && smaller.design.get().uses().stream()
                        .allMatch(use -> design.get().needs(use.value()));
    }

    /** The same, but for lays of a larger design that are better: with its own pieces of them. */
    DesignLay atMost(DesignLay larger) {
        return new DesignLay(
                name,
                design,
                stocks.stream().map(stock -> atMost(stock, larger)).toList(),
                remnants,
                bolts.stream().map(bolt -> atMost(bolt, larger)).toList(),
                crossed);
    }

    /** Where places are pinned, the lay is hers, and no other is taken for it. */
    private StockLay atMost(StockLay stock, DesignLay larger) {
        boolean isPinned = !stock.pinned().equals(Pinned.NONE);
        return larger.stocks.stream()
                .filter(other -> !isPinned && !stock.fits())
                .filter(other -> other.role() == stock.role() && other.fits())
                .findFirst()
                .map(other -> other.only(piece -> design.orElseThrow().needs(piece)))
                .orElse(stock);
    }

    private static BoltLength atMost(BoltLength bolt, DesignLay larger) {
        return larger.bolts.stream()
                .filter(other -> other.role() == bolt.role() && other.width().equals(bolt.width()))
                .findFirst()
                .map(bolt::atMost)
                .orElse(bolt);
    }

    /** The same with what stays over worked out anew. */
    DesignLay with(Remnants newRemnants) {
        return new DesignLay(name, design, stocks, newRemnants, bolts, crossed);
    }
}
