package secondbolt.lay;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import secondbolt.garment.Role;
import secondbolt.lay.design.BoltLength;
import secondbolt.lay.design.DesignLay;
import secondbolt.lay.plan.LayPlan;
import secondbolt.lay.plan.NewCloth;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/**
 * What a design would take of new cloth, and what is saved by not buying it.
 *
 * @param cloth as the maker tells of it, if she does
 * @param tape to print with
 */
public record NewClothInstead(Optional<NewCloth> cloth, Tape tape) {
    /** Of what the plan tells. */
    public static NewClothInstead of(LayPlan plan, Tape tape) {
        return new NewClothInstead(plan.rules().newCloth(), tape);
    }

    /** What the column of a table is headed with; nothing if the maker tells of no new cloth. */
    Optional<String> heading() {
        return cloth.map(c -> c.price().isPresent() ? "Cost saved" : "New cloth instead");
    }

    /** What stands below the heading: what is saved, or how much it would be; empty if neither. */
    String cell(DesignLay design) {
        boolean isPriced = cloth.filter(c -> c.price().isPresent()).isPresent();
        return (isPriced ? saved(design) : length(design)).orElse("");
    }

    /** How much it would be. */
    public Optional<String> length(DesignLay design) {
        return cloth.flatMap(
                c ->
                        bought(design, c)
                                .map(l -> tape.printShop(l) + " of " + tape.print(c.width())));
    }

    /** What is saved, if the price is told; nothing by a design that does not fit on the cloth. */
    public Optional<String> saved(DesignLay design) {
        Optional<NewCloth> instead = cloth.filter(any -> design.fits());
        return instead.flatMap(
                c -> bought(design, c).flatMap(l -> c.price().map(price -> cost(l, price))));
    }

    private static Optional<Length> bought(DesignLay design, NewCloth cloth) {
        return design.bolts().stream()
                .filter(bolt -> bolt.role() == Role.MAIN && bolt.width().equals(cloth.width()))
                .findFirst()
                .flatMap(BoltLength::toBuy);
    }

    private String cost(Length length, BigDecimal price) {
        BigDecimal units =
                BigDecimal.valueOf(length.millimetres())
                        .divide(
                                BigDecimal.valueOf(tape.pricedLength().millimetres()),
                                MathContext.DECIMAL64);
        return units.multiply(price).setScale(2, RoundingMode.HALF_UP).toPlainString();
    }
}
