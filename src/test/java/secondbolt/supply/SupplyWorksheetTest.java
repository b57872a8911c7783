package secondbolt.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.measure.Volume;
import secondbolt.supply.plan.Quantity;
import secondbolt.task.Amount;
import secondbolt.task.Need;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Worksheet;

class SupplyWorksheetTest {
    private static final Need BUTTONS =
            Need.of("shirt buttons", new Amount.Pieces(8, ""), "front band, cuffs");
    private static final Need LATE =
            Need.of("zip", new Amount.Pieces(1, ""), "side seam")
                    .boughtAfter("dye", "Its tape stays pale in the bath.");
    private static final WorkStep DYE = WorkStep.of("dye", Stage.DYEING, "Dye the cloth.");

    private static String figures(Worksheet sheet) {
        return sheet.figures().asMap().toString();
    }

    @Test
    void showsNothingWhereNothingIsWritten() {
        assertEquals(Optional.empty(), Written.ALONE.sheet("cm"));
        assertEquals(Optional.empty(), Written.ALONE.sheet("in", "supplies: none", "hours: none"));
    }

    /** An entry that names a needed thing prices it; its amount is not typed again. */
    @Test
    void pricesWhatIsNeeded() {
        Worksheet sheet =
                Written.needing(BUTTONS)
                        .sheet(
                                "cm",
                                "currency: EUR",
                                "supplies: [{item: shirt buttons, have: 2, price: 0.40}]")
                        .orElseThrow();
        assertEquals(List.of(), sheet.findings());
        assertTrue(figures(sheet).contains("to_buy=6"), figures(sheet));
        assertTrue(figures(sheet).contains("paid=2.40 EUR"), figures(sheet));
    }

    @Test
    void asksAboutANameThatIsAlmostANeededOne() {
        Written needing = Written.needing(BUTTONS);
        assertEquals(
                List.of("supply-like-another"),
                needing.findings("supplies: [{item: shirt button, count: 8}]"));
        assertEquals(
                List.of(),
                needing.findings("supplies: [{item: shirt button, count: 8, for: the cuffs}]"));
        Need needle = Need.of("needle 80", new Amount.Pieces(1, ""), "lawn");
        assertEquals(
                List.of(),
                Written.needing(needle).findings("supplies: [{item: needle 90, count: 1}]"));
    }

    @Test
    void tellsACountThatDiffersFromTheOneWorkedOut() {
        Written needing = Written.needing(BUTTONS);
        assertEquals(
                List.of("supply-too-few"),
                needing.findings("supplies: [{item: shirt buttons, count: 7}]"));
        assertEquals(
                List.of("supply-more-than-needed"),
                needing.findings("supplies: [{item: shirt buttons, count: 9}]"));
        assertEquals(List.of(), needing.findings("supplies: [{item: shirt buttons, count: 8}]"));
        Need tape = Need.of("tape", new Amount.Run(Length.ofMillimetres(1960)), "hem");
        assertEquals(
                List.of(), Written.needing(tape).findings("supplies: [{item: tape, length: 2 m}]"));
    }

    @Test
    void whatMustWaitStandsApart() {
        Worksheet sheet =
                new Written(List.of(BUTTONS, LATE), List.of(DYE)).sheet("cm").orElseThrow();
        assertEquals(
                List.of("buy", "buy after dye"),
                sheet.gives().steps().stream().map(WorkStep::name).toList());
        assertEquals(
                List.of(new WorkStep.Follows("dye", "Its tape stays pale in the bath.")),
                sheet.gives().steps().get(1).follows());
        String blocks = sheet.sheets().get(0).blocks().toString();
        assertTrue(blocks.contains("After dye, not before"), blocks);
        assertTrue(blocks.indexOf("shirt buttons") < blocks.indexOf("zip"), blocks);
    }

    @Test
    void theListThatLiesAboutBearsNoPrices() {
        Worksheet sheet =
                Written.ALONE
                        .sheet("cm", "currency: EUR", "supplies: [{item: z, count: 1, price: 2.5}]")
                        .orElseThrow();
        assertFalse(sheet.sheets().get(0).blocks().toString().contains("2.5"));
        assertTrue(sheet.blocks().toString().contains("2.50 EUR"));
    }

    /** Derived: 0.5 h, 1 h 45 min and 0.1 h are 2 h 21 min. */
    @Test
    void addsUpHoursAndGuessesNone() {
        Worksheet sheet =
                Written.ALONE
                        .sheet(
                                "cm",
                                "hours: {survey: 0.5, schneiden: 1 h 45 min, 縫製: 0.1,"
                                        + " hem: unknown}")
                        .orElseThrow();
        assertTrue(sheet.blocks().toString().contains("2 h 21 min, without hem"));
        assertTrue(
                figures(sheet).contains("hours={survey=0.5, schneiden=1.75, 縫製=0.1, hem=null}"),
                figures(sheet));
        assertEquals(List.of("hours of hem"), sheet.open().stream().map(Open::what).toList());
        assertTrue(figures(sheet).contains("hours_in_all=2.35"), figures(sheet));
    }

    @Test
    void unknownMoneyLeavesTheSumOpen() {
        Worksheet sheet =
                Written.ALONE
                        .sheet(
                                "cm",
                                "currency: unknown",
                                "supplies: [{item: zip, count: 1, price: 2}]")
                        .orElseThrow();
        assertEquals(
                List.of("the money that prices are in"),
                sheet.open().stream().map(Open::what).toList());
    }

    @Test
    void asksWhatAThingWithoutAnAmountIsFor() {
        assertEquals(
                List.of("supply-of-nothing"), Written.ALONE.findings("supplies: [{item: zip}]"));
    }

    @Test
    void readsPacksInAnyMeasure() {
        Worksheet sheet =
                Written.ALONE
                        .sheet(
                                "in",
                                "supplies: [{item: tape, length: 2 1/2 yd, pack: 2 yd}, {item:"
                                        + " salt, mass: 17 oz, pack: 1 lb}, {item: vinegar, volume:"
                                        + " 3 cup, pack: 1 gal}, {item: pins, count: 7, pack: 6}]")
                        .orElseThrow();
        String blocks = sheet.blocks().toString();
        assertTrue(blocks.contains("2 packs of 2 yd"), blocks);
        assertTrue(blocks.contains("2 packs of 16 oz"), blocks);
        assertTrue(blocks.contains("1 pack of 1 gal (US)"), blocks);
        assertTrue(blocks.contains("2 packs of 6"), blocks);
    }

    /** The price of an unknown pack is not taken for that of one. */
    @Test
    void anUnknownPackLeavesItsPriceOpen() {
        Worksheet sheet =
                Written.needing(BUTTONS)
                        .sheet(
                                "cm",
                                "currency: EUR",
                                "supplies: [{item: shirt buttons, pack: unknown, price: 3}]")
                        .orElseThrow();
        assertFalse(figures(sheet).contains("paid"), figures(sheet));
        assertEquals(1, sheet.open().size());
    }

    /** A list's own name may be longer than hers; a comma needs quotes between others. */
    @Test
    void namesWhatMayBeMeant() {
        Need thread = Need.of("thread, polyester, blue", new Amount.Pieces(1, "spool"), "seams");
        Written written = Written.needing(thread);
        String remedy =
                written.sheet("cm", "supplies: [{item: thread, have: 1}]")
                        .orElseThrow()
                        .findings()
                        .get(0)
                        .remedy();
        assertTrue(remedy.contains("`item: \"thread, polyester, blue\"`"), remedy);
        String pasted = "supplies: [{item: \"thread, polyester, blue\", have: 1}]";
        assertEquals(List.of(), written.sheet("cm", pasted).orElseThrow().findings());
    }

    /** A US teaspoon is 4.93 ml: 10 ml are 3 of them rounded up, and no quarter of a cup. */
    @Test
    void measuresLittleByTheSpoon() {
        Volume little =
                Volume.parse("10 ml").fold(Optional::of, no -> Optional.<Volume>empty()).get();
        Quantity soap = Quantity.of(new Amount.Liquid(little));
        assertEquals("3 teaspoons (US)", SupplyWords.exact(soap, Tape.INCH));
    }
}
