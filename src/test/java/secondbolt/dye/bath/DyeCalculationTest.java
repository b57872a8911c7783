package secondbolt.dye.bath;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.block.Both;
import secondbolt.dye.DyeTopic;
import secondbolt.dye.Dyed;
import secondbolt.dye.guide.DyePrint;
import secondbolt.dye.recipe.RecipeLine;
import secondbolt.dye.recipe.Substance;
import secondbolt.measure.Tape;
import secondbolt.project.Workings;

/** Amounts and baths by the published recipes; masses, ratios and sums derived from them. */
class DyeCalculationTest {
    private static final String COTTON = "cloth: {sheet: {size: unknown, mass: %s, fibre: cotton}}";

    private static DyeBatch batch(String cloth, String dye) {
        Workings workings = Dyed.worked(cloth, "dye: " + dye);
        return workings.came(DyeTopic.NAME).orElseThrow().get(0);
    }

    private static List<String> all(DyeBatch batch, Substance what) {
        DyePrint print = new DyePrint(Tape.CENTIMETRE);
        return batch.recipe().orElseThrow().of(what).stream()
                .map((RecipeLine line) -> print.all(batch, line))
                .map(Both::own)
                .toList();
    }

    /** 822 g, 35 % cotton, 3 %: 8.63 g, not the 24.66 g of the whole cloth (derived). */
    @Test
    void weighsTheDyeForTheFibreThatTakes() {
        DyeBatch batch =
                batch(
                        "cloth: {cover: {size: unknown, mass: 822 g, fibre: {cotton: 35 %,"
                                + " polyester: 65 %}}}",
                        "{cloth: [cover], class: reactive, depth: pale, shade: 3 %}");
        assertEquals("288 g", Tape.CENTIMETRE.printFine(batch.bathing().takes().orElseThrow()));
        assertEquals(List.of("8.63 g"), all(batch, Substance.DYE));
    }

    /** Dyer's instruction sheet, cool-water reactive dye: 500 g medium, 2.5 %, 20 : 1. */
    @Test
    void dyesHalfAKilogramOfCottonMedium() {
        DyeBatch batch =
                batch(
                        COTTON.formatted("500 g"),
                        "{cloth: [sheet], class: reactive, depth: medium, shade: 2.5 %}");
        assertEquals("10 l", Tape.CENTIMETRE.print(batch.bathing().bath().orElseThrow()));
        assertEquals(List.of("12.5 g"), all(batch, Substance.DYE));
        assertEquals(List.of("400 g"), all(batch, Substance.SALT));
        assertEquals(List.of("100 g"), all(batch, Substance.SODA));
        DyeBatch roomy =
                batch(
                        COTTON.formatted("500 g"),
                        "{cloth: [sheet], class: reactive, depth: medium, ratio: 30}");
        assertEquals(List.of("600 g"), all(roomy, Substance.SALT));
        assertEquals(List.of("150 g"), all(roomy, Substance.SODA));
        assertEquals(List.of("10 g to 15 g"), all(roomy, Substance.DYE));
    }

    /** The same sheet, 822 g heavy at 7 %; beside it a dye maker's answer, about 5 g/l of soda. */
    @Test
    void putsPublishedAmountsSideBySideAndNeverAveragesThem() {
        DyeBatch batch =
                batch(
                        COTTON.formatted("822 g"),
                        "{cloth: [sheet], class: reactive, depth: dark, shade: 7 %}");
        assertEquals(List.of("57.5 g"), all(batch, Substance.DYE));
        assertEquals("16.44 l", Tape.CENTIMETRE.print(batch.bathing().bath().orElseThrow()));
        assertEquals(List.of("986 g", "838 g", "686 g"), all(batch, Substance.SALT));
        assertEquals(List.of("329 g", "82.2 g"), all(batch, Substance.SODA));
    }

    /** Laboratory exercise, 2020; a maker's data sheet (fixative 30 ml/l); derived sums. */
    @Test
    void dyesCottonWithDirectDye() {
        DyeBatch batch =
                batch(
                        COTTON.formatted("822 g"),
                        "{cloth: [sheet], class: direct, depth: medium, shade: 2 %}");
        assertEquals(List.of("16.4 g"), all(batch, Substance.DYE));
        assertEquals(List.of("82.2 g", "206 g"), all(batch, Substance.SALT));
        assertEquals(
                List.of("none", "4.11 g to 8.22 g", "8.22 g to 24.7 g"),
                all(batch, Substance.SODA));
        assertEquals(List.of("493 ml"), all(batch, Substance.FIXATIVE));
        DyeBatch dark =
                batch(COTTON.formatted("822 g"), "{cloth: [sheet], class: direct, depth: dark}");
        assertEquals("164 g", all(dark, Substance.SALT).get(0));
        assertEquals(List.of("20.6 g", "24.7 g to 32.9 g"), all(dark, Substance.DYE));
    }

    /** A maker's home sheet: half an ounce to 2 lb is 1.5625 % (derived). */
    @Test
    void keepsTheRatioOfAHomeSheetExactly() {
        DyeBatch batch =
                batch(COTTON.formatted("2 lb"), "{cloth: [sheet], class: direct, depth: medium}");
        assertEquals("14.2 g", all(batch, Substance.DYE).get(0)); // half an ounce
        assertEquals("227 g", all(batch, Substance.SALT).get(1)); // 4 oz to the pound
    }

    /** Packet sheet and dyer's notes: a cup against a quarter cup; acetic 1 to 3 % as vinegar. */
    @Test
    void dyesSilkWithAcidDye() {
        DyeBatch batch =
                batch(
                        "cloth: {scarf: {size: unknown, mass: 300 g, fibre: silk}}",
                        "{cloth: [scarf], class: acid, depth: medium, shade: 1 %}");
        assertEquals(List.of("3 g"), all(batch, Substance.DYE));
        assertEquals(List.of("156 ml", "39 ml", "60 g to 180 g"), all(batch, Substance.VINEGAR));
        String heats = new DyePrint(Tape.CENTIMETRE).heats(batch.recipe().orElseThrow());
        assertTrue(heats.contains("at most, never boiled, for the silk: 86 °C (186 °F)"), heats);
    }

    /** Source: dyer's notes on acid dye, 2019: wool 200 °F, never boiled. */
    @Test
    void boilsNoWool() {
        DyeBatch batch =
                batch(
                        "cloth: {blanket: {size: unknown, mass: 1.2 kg, fibre: wool}}",
                        "{cloth: [blanket], class: acid, depth: dark}");
        String heats = new DyePrint(Tape.CENTIMETRE).heats(batch.recipe().orElseThrow());
        assertTrue(heats.contains("93 °C (200 °F)"), heats);
        assertFalse(heats.contains("100 °C"), heats);
    }

    /** Hand-dye packet leaflet: 822 g by packets of 250 g, 250 g of salt to each. */
    @Test
    void countsPackets() {
        DyeBatch batch =
                batch(
                        COTTON.formatted("822 g"),
                        "{cloth: [sheet], class: reactive, packet: {dyes: 250 g}, leaflet: {salt:"
                                + " 250 g a packet, soda: none}}");
        assertEquals(4, batch.packets().orElseThrow().most());
        assertEquals(List.of("1000 g"), all(batch, Substance.SALT));
        assertEquals(List.of("none"), all(batch, Substance.SODA));
    }

    /** A dyer's reference site: a packet to a pound; black to a half or a quarter pound. */
    @ParameterizedTest
    @CsvSource({"pale, 2, 2", "medium, 2, 2", "black, 4, 8"})
    void countsPacketsOfAHouseholdBlend(String depth, int least, int most) {
        DyeBatch batch =
                batch(
                        COTTON.formatted("822 g"),
                        "{cloth: [sheet], class: household blend, depth: " + depth + "}");
        assertEquals(least, batch.packets().orElseThrow().least());
        assertEquals(most, batch.packets().orElseThrow().most());
    }

    /** 822 g in a working vessel of 10 l at 20 : 1: two baths of 411 g, 8.22 l each (derived). */
    @Test
    void sharesTwoCurtainsOutOverTwoBaths() {
        DyeBatch batch =
                batch(
                        "cloth: {left: {size: unknown, mass: 411 g, fibre: cotton}, right: {like:"
                                + " left}}",
                        "{cloth: [left, right], class: direct, depth: medium, vessel: 10 l}");
        assertEquals(2, Dyed.baths(batch));
        for (Load load : batch.bathing().loads()) {
            assertEquals("411 g", Tape.CENTIMETRE.print(load.dry()));
            assertEquals("8.22 l", Tape.CENTIMETRE.print(load.bath()));
        }
    }

    @Test
    void refusesAVesselThatDoesNotHoldOneCloth() {
        DyeBatch batch =
                batch(
                        COTTON.formatted("822 g"),
                        "{cloth: [sheet], class: direct, depth: medium, vessel: 10 l}");
        assertEquals(Set.of(DyeBatch.Refusal.VESSEL), batch.refusals());
        assertEquals(Optional.empty(), batch.recipe());
        assertEquals(
                "16.44 l", Tape.CENTIMETRE.print(batch.bathing().tooLarge().orElseThrow().needs()));
    }

    /** A dyer's reference site: a top loader takes 8 lb dry at most; 45 l to 3 kg (derived). */
    @Test
    void fillsATopLoaderByItsWater() {
        DyeBatch batch =
                batch(
                        COTTON.formatted("2.5 kg"),
                        "{cloth: [sheet], class: reactive, depth: pale, machine: top loader, vessel:"
                                + " 45 l}");
        assertEquals(List.of("900 g"), all(batch, Substance.SALT)); // 20 g/l of 45 l
        DyeBatch heavy =
                batch(
                        COTTON.formatted("4 kg"),
                        "{cloth: [sheet], class: reactive, depth: pale, machine: top loader, vessel:"
                                + " 70 l}");
        assertEquals(Set.of(DyeBatch.Refusal.VESSEL), heavy.refusals());
    }

    /** 20 : 1: a kilogram of cloth in its bath weighs 21 kg (derived). */
    @Test
    void weighsBathAndClothTogether() {
        DyeBatch batch =
                batch(COTTON.formatted("1 kg"), "{cloth: [sheet], class: direct, depth: pale}");
        assertEquals("21000 g", Tape.CENTIMETRE.print(batch.bathing().loads().get(0).weighs()));
    }

    /** Without a fibre or a mass there is not one gram. */
    @Test
    void weighsNothingOfWhatIsNotKnown() {
        DyeBatch fibre =
                batch(
                        "cloth: {sheet: {size: [150, 200], mass: 500 g, fibre: unknown}}",
                        "{cloth: [sheet], class: direct, depth: medium}");
        assertEquals(Optional.empty(), fibre.recipe());
        assertFalse(fibre.isReckoned());
        DyeBatch mass =
                batch(
                        "cloth: {sheet: {size: [150, 200], fibre: cotton}}",
                        "{cloth: [sheet], class: direct, depth: medium}");
        assertFalse(mass.isReckoned());
        assertEquals(List.of("open", "open"), all(mass, Substance.DYE));
    }

    /** Front and back meet in a seam that is seen; the pocket bag is hidden and may lie apart. */
    @Test
    void keepsInOneBathWhatMeetsInASeam() {
        DyeBatch batch =
                batch(
                        "cloth: {sheet: {size: [150, 200], weight: 200 g/m2, fibre: linen, prewash:"
                                + " done, flaws: none}}\npattern: {rights: mine, seam allowance: {of:"
                                + " 0, included: true}, pieces: {front: {cut: 1, rectangle: [50, 50]},"
                                + " back: {cut: 1, rectangle: [50, 50]}, bag: {cut: 1, rectangle: [20,"
                                + " 50], seen: hidden}, scarf: {cut: 1, rectangle: [50, 50]}}, seams:"
                                + " [[front.left, back.left], [bag.left, front.right]]}",
                        "{cloth: [sheet], class: reactive, depth: pale, when: after cutting}");
        List<String> parts = batch.bathing().parts().stream().map(Part::name).toList();
        assertEquals(List.of("front, back", "bag", "scarf"), parts);
        assertEquals("100 g", Tape.CENTIMETRE.print(batch.bathing().parts().get(0).dry()));
    }
}
