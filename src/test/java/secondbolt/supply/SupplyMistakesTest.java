package secondbolt.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.measure.Length;
import secondbolt.task.Amount;
import secondbolt.task.Need;

class SupplyMistakesTest {
    private static List<String> mistakes(String... lines) {
        return Written.ALONE.mistakes(lines);
    }

    @Test
    void aPriceNeedsItsMoney() {
        assertEquals(
                List.of(
                        "a price without `currency` | `currency: EUR`, or the money you pay in, as a"
                                + " line of its own beside `supplies`"),
                mistakes("supplies: [{item: zip, count: 1, price: 2}, {item: b, price: 3}]"));
    }

    @Test
    void aThingIsToldOfOnce() {
        assertEquals(
                List.of(
                        "`Shirt Buttons`, which is told of above | each thing once, with all that is"
                                + " told of it"),
                mistakes("supplies: [{item: shirt buttons, count: 1}, {item: Shirt Buttons}]"));
    }

    @Test
    void aThingHasOneMeasure() {
        assertEquals(
                List.of("`tape` measured by length and counted | one of both, such as `2 m` here"),
                mistakes("supplies: [{item: tape, length: 2 m, pack: 6}]"));
        assertEquals(
                List.of("`count` and `length` of one thing | one of them: what it is sold by"),
                mistakes("supplies: [{item: tape, length: 2 m, count: 6}]"));
    }

    @Test
    void whatIsWorkedOutByLengthIsNotCounted() {
        Need elastic =
                Need.of("elastic", new Amount.Run(Length.ofMillimetres(800)), "for the waist");
        assertEquals(
                List.of(
                        "`elastic` counted, which the notebook works out measured by length | the"
                                + " same measure, such as `length: 2 m`, or no amount: it is worked"
                                + " out"),
                Written.needing(elastic).mistakes("supplies: [{item: elastic, have: 1}]"));
    }

    @Test
    void nothingIsNegative() {
        assertTrue(mistakes("hours: {sewing: -1}").get(0).startsWith("`-1` | "));
        String money = "currency: EUR";
        assertTrue(
                mistakes("supplies: [{item: zip, count: 1, price: -2}]", money)
                        .get(0)
                        .startsWith("`-2` | a number from 0"));
        assertTrue(
                mistakes("supplies: [{item: zip, count: -1}]")
                        .get(0)
                        .startsWith("`-1` | a whole number from 1"));
        assertTrue(
                mistakes("supplies: [{item: zip, count: 1, serves: 0}]")
                        .get(0)
                        .startsWith("`0` | a whole number from 1"));
        assertTrue(
                mistakes("supplies: [{item: zip, count: 1, pack: 0}]")
                        .get(0)
                        .startsWith("`0` | a whole number from 1"));
    }

    /** All in one go, with what would be right. */
    @Test
    void areToldTogether() {
        assertEquals(
                3,
                mistakes(
                                "supplies: [{item: zip, count: 1, price: 2}, {item: zip}, {item: t,"
                                        + " count: 1, have: 3 m}]")
                        .size());
    }

    @Test
    void moneyIsAWord() {
        assertEquals(1, mistakes("currency: 5").size());
        assertEquals(1, mistakes("currency: no").size());
        assertEquals(List.of(), mistakes("currency: kr"));
        assertEquals(List.of(), mistakes("currency: 円"));
    }
}
