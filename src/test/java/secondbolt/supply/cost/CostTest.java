package secondbolt.supply.cost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.file.source.Place;
import secondbolt.file.value.Placed;
import secondbolt.measure.Length;
import secondbolt.measure.Mass;
import secondbolt.measure.Tape;
import secondbolt.supply.list.Shopping;
import secondbolt.supply.plan.Currency;
import secondbolt.supply.plan.Quantity;
import secondbolt.supply.plan.Supply;
import secondbolt.task.Amount;

/** All sums derived, by hand. */
class CostTest {
    private static final Currency EURO = new Currency("EUR");
    private static final Place HERE = new Place("project.yaml", 1, 1);

    private static Supply supply(String item, Amount amount, String price) {
        return supply(item, amount, price, Optional.empty(), Optional.empty(), 1);
    }

    private static Supply supply(
            String item,
            Amount amount,
            String price,
            Optional<Quantity> pack,
            Optional<Quantity> have,
            int serves) {
        return new Supply(
                new Placed<>(item, HERE),
                Optional.of(amount),
                Optional.empty(),
                Optional.of(price)
                        .filter(p -> !p.isEmpty())
                        .map(p -> new Placed<>(new BigDecimal(p), HERE)),
                pack.map(p -> new Placed<>(p, HERE)),
                have.map(h -> new Placed<>(h, HERE)),
                serves);
    }

    private static Cost cost(Currency currency, Tape tape, Supply... supplies) {
        Shopping list =
                Shopping.of(
                        new Shopping.Asked(List.of(), List.of(), "", List.of(), List.of(supplies)),
                        tape);
        return Cost.of(list.purchases(), currency, tape);
    }

    private static Amount count(int count) {
        return new Amount.Pieces(count, "");
    }

    /** In binary fractions it would be 0.30000000000000004. */
    @Test
    void aTenthAndTwoTenthsAreThreeTenths() {
        Cost cost =
                cost(
                        EURO,
                        Tape.CENTIMETRE,
                        supply("pin", count(1), "0.1"),
                        supply("needle", count(1), "0.2"));
        assertEquals(new BigDecimal("0.30"), cost.paid());
        assertEquals("0.30 EUR", EURO.print(cost.paid()));
    }

    /** 7 buttons less 2 in the box are 5: 5 × 0.40 = 2.00. */
    @Test
    void whatIsInTheHouseIsNotPaidAgain() {
        Cost cost =
                cost(
                        EURO,
                        Tape.CENTIMETRE,
                        supply(
                                "buttons",
                                count(7),
                                "0.40",
                                Optional.empty(),
                                Optional.of(Quantity.ofCount(2)),
                                1));
        assertEquals(new BigDecimal("2.00"), cost.paid());
    }

    /** 7 of them are two packs of 6: 2 × 1.95 = 3.90. */
    @Test
    void wholePacksArePaid() {
        Cost cost =
                cost(
                        EURO,
                        Tape.CENTIMETRE,
                        supply(
                                "buttons",
                                count(7),
                                "1.95",
                                Optional.of(Quantity.ofCount(6)),
                                Optional.empty(),
                                1));
        assertEquals(new BigDecimal("3.90"), cost.paid());
    }

    /**
     * 83 cm are cut as 0.85 m: 0.85 × 2.30 = 1.955, paid 1.96. 30 in as 7/8 yd: 0.875 × 2 = 1.75.
     */
    @Test
    void aLengthIsPaidByTheMetreOrTheYardAsItIsCut() {
        Amount metric = new Amount.Run(Length.ofMillimetres(830));
        assertEquals(
                new BigDecimal("1.96"),
                cost(EURO, Tape.CENTIMETRE, supply("elastic", metric, "2.30")).paid());
        Amount inch = new Amount.Run(Length.ofInches(30, 1));
        assertEquals(
                new BigDecimal("1.75"),
                cost(new Currency("USD"), Tape.INCH, supply("elastic", inch, "2")).paid());
    }

    /** 10 shared by three is 3.33 for this project; at the shop 10 are paid. */
    @Test
    void whatServesSeveralProjectsIsPaidOnceAndShared() {
        Cost cost =
                cost(
                        EURO,
                        Tape.CENTIMETRE,
                        supply("soda", count(1), "10", Optional.empty(), Optional.empty(), 3),
                        supply("zip", count(1), "2.5"));
        assertEquals(new BigDecimal("12.50"), cost.paid());
        assertEquals(new BigDecimal("5.83"), cost.own());
        assertTrue(cost.isShared());
    }

    @Test
    void whatHasNoPriceIsNamedAndNotGuessed() {
        Amount grams = new Amount.Weighed(Mass.ofGrams("480"));
        Cost cost =
                cost(
                        EURO,
                        Tape.CENTIMETRE,
                        supply("thread", count(2), ""),
                        supply("salt", grams, "1.20"),
                        supply("zip", count(1), "2.50"));
        assertEquals(List.of("thread", "salt"), cost.unpriced());
        assertEquals(List.of("salt"), cost.priceOfWhat());
        assertEquals(new BigDecimal("2.50"), cost.paid());
    }

    /** 480 g are one bag of 500 g. */
    @Test
    void whatIsWeighedIsPaidByThePack() {
        Amount grams = new Amount.Weighed(Mass.ofGrams("480"));
        Quantity bag = Quantity.of(new Amount.Weighed(Mass.ofGrams("500")));
        Cost cost =
                cost(
                        EURO,
                        Tape.CENTIMETRE,
                        supply("salt", grams, "1.20", Optional.of(bag), Optional.empty(), 1));
        assertEquals(new BigDecimal("1.20"), cost.paid());
    }

    /** A yen has no parts, a dinar of Kuwait a thousand. Source: ISO 4217, minor units. */
    @Test
    void sumsHaveTheDecimalsOfTheirMoney() {
        Supply thirds = supply("soda", count(1), "1000", Optional.empty(), Optional.empty(), 3);
        Cost yen = cost(new Currency("JPY"), Tape.CENTIMETRE, thirds);
        assertEquals("333 JPY", yen.currency().print(yen.own()));
        Cost dinar = cost(new Currency("KWD"), Tape.CENTIMETRE, thirds);
        assertEquals("333.333 KWD", dinar.currency().print(dinar.own()));
        Cost sign = cost(new Currency("€"), Tape.CENTIMETRE, thirds);
        assertEquals("333.33 €", sign.currency().print(sign.own()));
    }

    /** A price finer than the money is kept: 200 pins at 0.015 are 3.00. */
    @Test
    void aFinePriceIsRoundedOnlyWhenPaid() {
        Cost cost = cost(EURO, Tape.CENTIMETRE, supply("pins", count(200), "0.015"));
        assertEquals(new BigDecimal("3.00"), cost.paid());
        assertEquals("0.015 EUR", EURO.printPrice(new BigDecimal("0.015")));
    }
}
