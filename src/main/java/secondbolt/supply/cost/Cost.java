package secondbolt.supply.cost;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import secondbolt.file.value.Placed;
import secondbolt.measure.Tape;
import secondbolt.supply.list.Purchase;
import secondbolt.supply.plan.Currency;
import secondbolt.supply.plan.Quantity;
import secondbolt.supply.plan.Supply;
import secondbolt.task.Amount;

/**
 * What is paid, and what of it is this project's.
 *
 * @param currency the money of all sums
 * @param lines of all that is bought and priced
 * @param unpriced names of what is bought and has no price: the sums are without them
 * @param priceOfWhat those of them whose price is told, and not of how much
 */
public record Cost(
        Currency currency, List<Line> lines, List<String> unpriced, List<String> priceOfWhat) {
    /** Copies the lists. */
    public Cost {
        lines = List.copyOf(lines);
        unpriced = List.copyOf(unpriced);
        priceOfWhat = List.copyOf(priceOfWhat);
    }

    /**
     * One thing.
     *
     * @param item what it is
     * @param price as written
     * @param times how many of what the price is of
     * @param paid at the shop
     * @param own what of that is this project's, where several share the thing; else all of it
     * @param serves how many share it
     */
    public record Line(
            String item,
            BigDecimal price,
            BigDecimal times,
            BigDecimal paid,
            BigDecimal own,
            int serves) {}

    /** Of a shopping list. */
    public static Cost of(List<Purchase> purchases, Currency currency, Tape tape) {
        List<Purchase> bought = purchases.stream().filter(p -> !p.isThere()).toList();
        List<Line> lines = bought.stream().flatMap(p -> line(p, currency, tape).stream()).toList();
        List<Purchase> unpriced =
                bought.stream().filter(p -> line(p, currency, tape).isEmpty()).toList();
        return new Cost(
                currency,
                lines,
                unpriced.stream().map(Purchase::item).distinct().toList(),
                unpriced.stream().filter(p -> price(p).isPresent()).map(Purchase::item).toList());
    }

    /** All that is paid at the shop. */
    public BigDecimal paid() {
        return sum(Line::paid);
    }

    /** All that is this project's. */
    public BigDecimal own() {
        return sum(Line::own);
    }

    /** Whether any of it serves other projects too. */
    public boolean isShared() {
        return lines.stream().anyMatch(line -> line.serves() > 1);
    }

    private BigDecimal sum(Function<Line, BigDecimal> part) {
        return currency.rounded(lines.stream().map(part).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    private static Optional<BigDecimal> price(Purchase purchase) {
        return purchase.supply().flatMap(Supply::price).map(Placed::value);
    }

    private static Optional<Line> line(Purchase purchase, Currency currency, Tape tape) {
        return times(purchase, tape)
                .flatMap(
                        times ->
                                price(purchase)
                                        .map(price -> line(purchase, price, times, currency)));
    }

    private static Line line(
            Purchase purchase, BigDecimal price, BigDecimal times, Currency currency) {
        BigDecimal exact = price.multiply(times);
        int serves = purchase.supply().map(Supply::serves).orElse(1);
        return new Line(
                purchase.item(),
                price,
                times,
                currency.rounded(exact),
                currency.shared(exact, serves),
                serves);
    }

    /**
     * How many packs, things, metres or yards are paid. A length stands on a step of which a metre
     * has 20 and a yard 8, so that it is an exact decimal of either. Of what is weighed or poured
     * only packs have a price.
     */
    private static Optional<BigDecimal> times(Purchase purchase, Tape tape) {
        if (purchase.packs().isPresent()) {
            return purchase.packs().map(BigDecimal::valueOf);
        }
        return switch (purchase.toBuy().kind()) {
            case COUNT -> Optional.of(BigDecimal.valueOf(purchase.toBuy().count()));
            case LENGTH -> Optional.of(pricedLengths(purchase.toBuy(), tape));
            case MASS, VOLUME -> Optional.empty();
        };
    }

    private static BigDecimal pricedLengths(Quantity length, Tape tape) {
        Quantity step = Quantity.of(new Amount.Run(tape.shopStep()));
        int stepsOfAPrice = Quantity.of(new Amount.Run(tape.pricedLength())).in(step);
        return BigDecimal.valueOf(length.in(step)).divide(BigDecimal.valueOf(stepsOfAPrice));
    }
}
