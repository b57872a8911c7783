package secondbolt.supply.list;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.measure.Length;
import secondbolt.measure.Mass;
import secondbolt.measure.Tape;
import secondbolt.measure.Volume;
import secondbolt.supply.plan.Notion;
import secondbolt.supply.plan.Quantity;
import secondbolt.task.Amount;
import secondbolt.task.Need;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;

/** All sums derived: additions and whole steps, by hand. */
class ShoppingTest {
    private static Need run(String item, long mm, String why) {
        return Need.of(item, new Amount.Run(Length.ofMillimetres(mm)), why);
    }

    private static Need pieces(String item, int count, String each, String why) {
        return Need.of(item, new Amount.Pieces(count, each), why);
    }

    private static Shopping list(Tape tape, Need... needs) {
        return Shopping.of(
                new Shopping.Asked(List.of(needs), List.of(), "", List.of(), List.of()), tape);
    }

    /** 83 cm for the waist and 2 × 21 cm for the cuffs are 1.25 m, which a shop cuts as it is. */
    @Test
    void addsUpWhatSeveralTopicsNeed() {
        Shopping list =
                list(Tape.CENTIMETRE, run("elastic", 830, "waist"), run("Elastic", 420, "cuffs"));
        assertEquals(1, list.purchases().size());
        Purchase elastic = list.purchases().get(0);
        assertEquals(List.of("waist", "cuffs"), elastic.why());
        assertEquals(Length.ofMillimetres(1250), elastic.toBuy().length());
    }

    /** 83 cm are bought as 85 cm; 30 in as 7/8 yd, which are 31 1/2 in. */
    @Test
    void roundsALengthUpToTheShopsStep() {
        Purchase metric = list(Tape.CENTIMETRE, run("elastic", 830, "")).purchases().get(0);
        assertEquals(Length.ofMillimetres(850), metric.toBuy().length());
        Need inches = Need.of("elastic", new Amount.Run(Length.ofInches(30, 1)), "");
        Purchase inch = list(Tape.INCH, inches).purchases().get(0);
        assertEquals(Length.ofInches(63, 2), inch.toBuy().length());
    }

    /** 480.4 g as 481 g; 236 ml as 240 ml, and on an inch tape as a cup of 236.588 ml. */
    @Test
    void roundsUpWhatIsWeighedAndPoured() {
        Need salt = Need.of("salt", new Amount.Weighed(Mass.ofGrams("480.4")), "");
        Need vinegar = Need.of("vinegar", new Amount.Liquid(Volume.ofMillilitres("236")), "");
        Shopping metric = list(Tape.CENTIMETRE, salt, vinegar);
        assertEquals(Mass.ofGrams("481"), metric.purchases().get(0).toBuy().mass());
        assertEquals(Volume.ofMillilitres("240"), metric.purchases().get(1).toBuy().volume());
        Shopping inch = list(Tape.INCH, salt, vinegar);
        assertEquals(Volume.ofMillilitres("236.5882365"), inch.purchases().get(1).toBuy().volume());
    }

    @Test
    void keepsApartWhatIsSoldInOtherUnits() {
        Shopping list =
                list(
                        Tape.CENTIMETRE,
                        pieces("thread", 1, "spool of 100 m", "seams"),
                        pieces("thread", 1, "spool of 500 m", "overlock"),
                        pieces("thread", 1, "spool of 100 m", "buttonholes"),
                        run("thread", 3000, "basting"));
        assertEquals(
                List.of("spool of 100 m", "spool of 500 m", ""),
                list.purchases().stream().map(Purchase::each).toList());
        assertEquals(2, list.purchases().get(0).toBuy().count());
    }

    @Test
    void needsNothingOfNothing() {
        assertTrue(
                list(Tape.CENTIMETRE, pieces("snaps", 0, "", ""), run("tape", 0, ""))
                        .purchases()
                        .isEmpty());
    }

    /** The envelope's 7 and the 8 that are worked out are the same buttons, not 15. */
    @Test
    void holdsADesignsNotionsAgainstWhatIsWorkedOut() {
        Notion seven = new Notion("Shirt Buttons", Optional.of(new Amount.Pieces(7, "")));
        Shopping list =
                Shopping.of(
                        new Shopping.Asked(
                                List.of(pieces("shirt buttons", 8, "", "front band")),
                                List.of(),
                                "shirt",
                                List.of(seven),
                                List.of()),
                        Tape.CENTIMETRE);
        Purchase buttons = list.purchases().get(0);
        assertEquals(8, buttons.toBuy().count());
        assertEquals(Quantity.ofCount(7), buttons.wanted().byDesign());
    }

    /** Buttons wait for the dye bath of this project; without one they are bought at any time. */
    @Test
    void waitsOnlyForStepsThatAreStillToBeDone() {
        Need buttons =
                pieces("buttons", 5, "", "band").boughtAfter("dye", "Match them to the colour.");
        WorkStep dye = WorkStep.of("dye", Stage.DYEING, "Dye it.");
        assertEquals(List.of("dye"), after(buttons, dye));
        assertEquals(List.of(), after(buttons, dye.done()));
        assertEquals(List.of(), after(buttons, WorkStep.of("hem", Stage.HEMMING, "Hem it.")));
    }

    private static List<String> after(Need need, WorkStep step) {
        Shopping list =
                Shopping.of(
                        new Shopping.Asked(List.of(need), List.of(step), "", List.of(), List.of()),
                        Tape.CENTIMETRE);
        return list.purchases().get(0).after().stream().map(WorkStep.Follows::step).toList();
    }
}
