package secondbolt.supply;

import java.util.List;
import java.util.Optional;
import secondbolt.figure.Figure;
import secondbolt.figure.Figures;
import secondbolt.shape.Point;
import secondbolt.supply.cost.Cost;
import secondbolt.supply.left.LeftOver;
import secondbolt.supply.left.RemnantUse;
import secondbolt.supply.list.Purchase;
import secondbolt.supply.plan.Quantity;

/** The supplies for other programs. Sums of money are text, so that they stay exact. */
final class SupplyFigures {
    private SupplyFigures() {}

    static Figures of(SupplyResult result, Optional<LeftOver> left) {
        Figures figures =
                new Figures()
                        .list(
                                "supplies",
                                result.shopping().purchases().stream()
                                        .map(p -> thing(p, result.cost()))
                                        .toList());
        if (!result.cost().lines().isEmpty()) {
            figures.inside("cost", cost(result.cost()));
        }
        left.ifPresent(over -> figures.inside("yardage", yardage(over)));
        if (!result.hours().isEmpty()) {
            Figures hours = new Figures();
            result.hours()
                    .forEach(
                            (work, time) ->
                                    hours.put(work, hours(time.toOptional().map(t -> t.hours()))));
            figures.inside("hours", hours);
            figures.put("hours_in_all", hours(Optional.of(result.worked().hours())));
        }
        return figures;
    }

    private static Figure hours(Optional<Double> hours) {
        return new Figure.Amount(hours, "");
    }

    private static Figures thing(Purchase purchase, Cost cost) {
        Figures figures = new Figures().text("item", purchase.item());
        if (!purchase.each().isEmpty()) {
            figures.text("each", purchase.each());
        }
        put(figures, "needed", purchase.wanted().most());
        purchase.have().ifPresent(have -> put(figures, "have", have));
        put(figures, "to_buy", purchase.toBuy());
        purchase.packs().ifPresent(packs -> figures.count("packs", packs));
        figures.text("why", SupplyWords.why(purchase));
        if (!purchase.isNow()) {
            figures.text("after", SupplyWords.after(purchase));
        }
        cost.lines().stream()
                .filter(line -> line.item().equals(purchase.item()))
                .findFirst()
                .ifPresent(line -> figures.text("paid", cost.currency().print(line.paid())));
        return figures;
    }

    private static void put(Figures figures, String key, Quantity quantity) {
        switch (quantity.kind()) {
            case COUNT -> figures.count(key, quantity.count());
            case LENGTH -> figures.length(key, quantity.length());
            case MASS -> figures.mass(key, Optional.of(quantity.mass()));
            case VOLUME ->
                    figures.put(
                            key,
                            new Figure.Amount(Optional.of(quantity.volume().millilitres()), "_ml"));
        }
    }

    private static Figures cost(Cost cost) {
        return new Figures()
                .text("currency", cost.currency().word())
                .text("paid", cost.currency().rounded(cost.paid()).toPlainString())
                .text("own", cost.currency().rounded(cost.own()).toPlainString())
                .text("unpriced", String.join(", ", cost.unpriced()));
    }

    private static Figures yardage(LeftOver left) {
        List<Figures> rectangles =
                left.rectangles().stream().map(SupplyFigures::rectangle).toList();
        return new Figures()
                .area("recovered", Optional.of(left.sound()))
                .area("used", Optional.of(left.used()))
                .area("left", Optional.of(left.left()))
                .list("rectangles", rectangles);
    }

    private static Figures rectangle(LeftOver.Rectangle rectangle) {
        return new Figures()
                .text("cloth", rectangle.cloth())
                .acrossAlong(
                        "at",
                        Optional.of(new Point(rectangle.box().leftMm(), rectangle.box().topMm())))
                .acrossAlong(
                        "size",
                        Optional.of(
                                new Point(rectangle.box().widthMm(), rectangle.box().heightMm())))
                .claim("double", rectangle.isDouble())
                .text(
                        "good_for",
                        String.join(
                                "; ", rectangle.uses().stream().map(RemnantUse::words).toList()));
    }
}
