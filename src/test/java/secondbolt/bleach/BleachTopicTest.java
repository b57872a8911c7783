package secondbolt.bleach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.project.WrittenProject;
import secondbolt.task.Amount;
import secondbolt.task.Hazard;
import secondbolt.task.Need;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Worksheet;

/** Cloths of several makers, bleached, stripped, or better left alone. */
class BleachTopicTest {
    private static final String SIZE = "size: [150, 220], prewash: done, flaws: none";

    private static Worksheet bleach(String cloth, String plan) {
        return bleachIn("cm", cloth, plan);
    }

    private static Worksheet bleachIn(String units, String cloth, String plan) {
        String text =
                "title: Try\nunits: "
                        + units
                        + "\ncloth: {"
                        + cloth
                        + "}\nbleach: {"
                        + plan
                        + "}\n";
        Mistakes mistakes = new Mistakes();
        Optional<WrittenProject> read =
                WrittenProject.read(SourceFile.of("project.yaml", text), mistakes);
        assertTrue(read.isPresent(), mistakes.inOrder().toString());
        return read.orElseThrow().workings("try").worksheets().stream()
                .filter(sheet -> sheet.name().equals("bleach"))
                .findFirst()
                .orElseThrow();
    }

    private static Set<String> codes(Worksheet sheet) {
        return sheet.findings().stream().map(Finding::code).collect(Collectors.toSet());
    }

    private static String said(Worksheet sheet) {
        return sheet.blocks()
                + " "
                + sheet.findings()
                + sheet.gives()
                + sheet.sheets().stream().map(s -> s.blocks().toString()).toList();
    }

    private static List<String> steps(Worksheet sheet) {
        return sheet.gives().steps().stream().map(WorkStep::name).toList();
    }

    /** Source: a bleach supplier's laundry page; Watson, 1907, for what is done instead. */
    @Test
    void aWoolBlanketGetsNoChlorineButPeroxide() {
        Worksheet sheet =
                bleach(
                        "Decke: {fibre: Wolle, " + SIZE + "}",
                        "Decke: {with: chlorine bleach, colour: white}");
        Finding stop = sheet.findings().get(0);
        assertEquals("bleach-ruins-fibre", stop.code());
        assertTrue(stop.isStop());
        assertTrue(stop.remedy().contains("`with: hydrogen peroxide`"));
        assertTrue(sheet.sheets().isEmpty());
        assertTrue(sheet.gives().steps().isEmpty());
        assertTrue(sheet.gives().needs().isEmpty());
    }

    /** A twentieth of elastane decides for the whole of a stretch cotton. */
    @Test
    void aBlendGoesByItsMostTenderFibre() {
        Worksheet sheet =
                bleach(
                        "jean: {fibre: {coton: 95 %, élasthanne: 5 %}, " + SIZE + "}",
                        "jean: {with: chlorine bleach, colour: white, pull test: held}");
        assertEquals(Set.of("bleach-ruins-fibre"), codes(sheet));
        assertTrue(sheet.findings().get(0).remedy().contains("`with: oxygen bleach`"));
    }

    @Test
    void aCheckedClothMustNotBeBleached() {
        String checked = "vichy: {fibre: coton, repeat: {along: 2, across: 2}, " + SIZE + "}";
        for (String with : List.of("chlorine bleach", "oxygen bleach", "hydrogen peroxide")) {
            Worksheet sheet = bleach(checked, "vichy: {with: " + with + ", pull test: held}");
            assertEquals(Set.of("bleach-takes-pattern"), codes(sheet), with);
            assertEquals(1, sheet.assumed().size());
        }
        Worksheet fast =
                bleach(
                        checked,
                        "vichy: {with: oxygen bleach, pull test: held, colour test: stays}");
        assertEquals(Set.of(), codes(fast));
        Worksheet went =
                bleach(checked, "vichy: {with: oxygen bleach, pull test: held, colour test: goes}");
        assertFalse(went.findings().get(0).remedy().contains("`colour test"));
        Worksheet undecided = bleach(checked, "vichy: {with: unknown}");
        assertEquals(Set.of("bleach-pattern-undecided"), codes(undecided));
    }

    @Test
    void nobodyBleachesWhatNobodyKnows() {
        Worksheet sheet =
                bleach("trouvé: {fibre: unknown, " + SIZE + "}", "trouvé: {with: oxygen bleach}");
        assertEquals(Set.of("bleach-fibre-unknown"), codes(sheet));
        assertEquals(1, sheet.open().size());
        assertTrue(sheet.sheets().isEmpty());
    }

    /** Derived: 16 to 1, 2 % and 4 % of 822 g, from a seller's data sheet. */
    @Test
    void whatARemoverTakesIsWeighedByTheCloth() {
        Worksheet sheet =
                bleach(
                        "duvet: {fibre: cotton, mass: 822 g, " + SIZE + "}",
                        "duvet: {with: colour remover, remover: thiourea dioxide, colour: dyed,"
                                + " dyed with: direct, pull test: held}");
        assertEquals(Set.of(), codes(sheet));
        List<Need> needs = sheet.gives().needs();
        assertEquals("thiourea dioxide", needs.get(0).item());
        assertEquals("soda ash", needs.get(1).item());
        assertEquals("citric acid", needs.get(2).item());
        Amount.Weighed soda = (Amount.Weighed) needs.get(1).amount();
        assertEquals(32.88, soda.mass().grams(), 1e-9);
        String page = said(sheet);
        assertTrue(page.contains("13.15 l (3.47 gal (US)) of water"), page);
        assertTrue(page.contains("16.4 g (0.58 oz) of thiourea dioxide"));
        assertTrue(page.contains("100 °C (212 °F), no hotter"));
        assertEquals(List.of("remove colour"), steps(sheet));
    }

    @Test
    void noMassNoGrams() {
        Worksheet sheet =
                bleach(
                        "duvet: {fibre: cotton, " + SIZE + "}",
                        "duvet: {with: colour remover, remover: thiourea dioxide, colour: dyed,"
                                + " dyed with: direct, pull test: held}");
        assertTrue(sheet.open().get(0).what().contains("weighs dry"));
        assertFalse(said(sheet).contains("of thiourea dioxide, stirred"));
    }

    @Test
    void aPacketThatNamesNothingHasNoFiguresOfOurs() {
        Worksheet sheet =
                bleach(
                        "duvet: {fibre: cotton, mass: 822 g, " + SIZE + "}",
                        "duvet: {with: colour remover, remover: packet, colour: dyed, dyed with:"
                                + " direct, pull test: held}");
        assertEquals(List.of(), sheet.open());
        assertTrue(said(sheet).contains("by the remover's leaflet"));
        assertFalse(said(sheet).contains("100 °C"));
    }

    /** Source: Fashion and Textiles, 2015: reactive dye is not stripped well. */
    @Test
    void reactiveDyeHardlyGoes() {
        Worksheet sheet =
                bleach(
                        "shirt: {fibre: cotton, mass: 300 g, " + SIZE + "}",
                        "shirt: {with: colour remover, remover: packet, colour: dyed, dyed with:"
                                + " reactive, pull test: held}");
        assertEquals(Set.of("remover-dye-stays"), codes(sheet));
    }

    /** Source: Beech, 1901, for the order; International Chemical Safety Card 1717. */
    @Test
    void bleachIsRinsedBeforeARemoverIsOpenedAndNoAcidIsInTheHouse() {
        Worksheet sheet =
                bleach(
                        "white: {fibre: cotton, mass: 400 g, "
                                + SIZE
                                + "}, blue: {fibre: cotton, mass: 500 g, "
                                + SIZE
                                + "}",
                        "white: {with: chlorine bleach, colour: white, pull test: held},"
                                + " blue: {with: colour remover, remover: thiourea dioxide, colour:"
                                + " dyed, dyed with: direct, pull test: held}");
        assertEquals(Set.of("bleach-and-remover"), codes(sheet));
        assertEquals(List.of("bleach", "rinse bleach", "remove colour"), steps(sheet));
        WorkStep remove = sheet.gives().steps().get(2);
        assertTrue(remove.follows().stream().anyMatch(f -> f.step().equals("rinse bleach")));
        assertFalse(remove.hazards().contains(Hazard.ACID));
        assertFalse(sheet.gives().needs().stream().anyMatch(n -> n.item().equals("citric acid")));
        assertFalse(said(sheet).contains("of citric acid in"));
        assertTrue(sheet.gives().steps().stream().allMatch(WorkStep::isWet));
    }

    /** Source: Centers for Disease Control and Prevention; Children's Hospital of Philadelphia. */
    @Test
    void vinegarAndAmmoniaAreOnlyEverForbidden() {
        Worksheet sheet =
                bleach(
                        "white: {fibre: cotton, mass: 400 g, " + SIZE + "}",
                        "white: {with: chlorine bleach, colour: white, pull test: held}");
        String all = said(sheet);
        for (String word : List.of("vinegar", "ammonia")) {
            for (int at = all.indexOf(word); at >= 0; at = all.indexOf(word, at + 1)) {
                String before = all.substring(Math.max(0, at - 160), at).toLowerCase(Locale.ROOT);
                String after =
                        all.substring(at, Math.min(all.length(), at + 160))
                                .toLowerCase(Locale.ROOT);
                assertTrue(
                        (before + after).matches("(?s).*(never|no |forbid|gives off).*"),
                        before + after);
            }
        }
        assertTrue(all.contains("Rinse, and only rinse"));
        assertTrue(all.contains("Cold or room-temperature water"));
        assertTrue(sheet.gives().steps().get(0).hazards().contains(Hazard.BLEACH));
        assertTrue(sheet.gives().steps().get(0).hazards().contains(Hazard.POISON_HELP));
    }

    /** Derived: 50 ml in 5 l is 200 ml in 20 l. */
    @Test
    void herOwnLabelIsReckonedForHerVessel() {
        Worksheet sheet =
                bleach(
                        "white: {fibre: cotton, " + SIZE + "}",
                        "white: {with: chlorine bleach, colour: white, pull test: held, vessel: 20"
                                + " l, label: {dose: 50 ml, in: 5 l, minutes: 10}}");
        assertTrue(said(sheet).contains("By your label 50 ml in 5 l of water, so 200 ml"));
        assertTrue(said(sheet).contains("10 minutes at most, by your label"));
        assertEquals(Set.of(), codes(sheet));
    }

    /** Source: household text, two tablespoons to a quart: 31 ml to a litre. */
    @Test
    void aSlipOfTenIsTold() {
        Worksheet sheet =
                bleachIn(
                        "in",
                        "white: {fibre: cotton, size: [60, 90], prewash: done, flaws: none}",
                        "white: {with: chlorine bleach, colour: white, pull test: held, label:"
                                + " {dose: 1 cup, in: 4 cups, minutes: 10}}");
        assertEquals(Set.of("bleach-dose-strong"), codes(sheet));
        Worksheet old =
                bleachIn(
                        "in",
                        "white: {fibre: cotton, size: [60, 90], prewash: done, flaws: none}",
                        "white: {with: chlorine bleach, colour: white, pull test: held, label:"
                                + " {dose: 2 tbsp, in: 4 cups, minutes: 10}}");
        assertEquals(Set.of(), codes(old));
    }

    @Test
    void undecidedComparesAndContributesNothing() {
        Worksheet sheet = bleach("robe: {fibre: soie, " + SIZE + "}", "robe: {with: unknown}");
        assertEquals(Set.of(), codes(sheet));
        assertEquals(1, sheet.open().size());
        assertTrue(sheet.gives().steps().isEmpty());
        assertTrue(sheet.sheets().isEmpty());
        assertTrue(said(sheet).contains("is whitened best by peroxide"));
    }

    /** Source: laundry pages (flame-retardant); household text (wash-and-wear finishes). */
    @Test
    void aFinishIsHarmedToo() {
        String plan = "pyjama: {with: chlorine bleach, colour: white, pull test: held}";
        String cloth = "pyjama: {fibre: cotton, " + SIZE + ", finish: ";
        assertEquals(
                Set.of("bleach-ruins-finish"), codes(bleach(cloth + "flame-retardant}", plan)));
        assertEquals(Set.of("bleach-easy-care"), codes(bleach(cloth + "easy-care}", plan)));
        assertEquals(Set.of(), codes(bleach(cloth + "starch}", plan)));
    }

    /** Source: ISO 3758:2012, the triangle with two lines, from memory. */
    @Test
    void theCareLabelComesBeforeTheFibre() {
        String cloth = "sheet: {fibre: cotton, " + SIZE + "}";
        String plan = "colour: white, pull test: held, triangle: ";
        assertEquals(
                Set.of("bleach-label-forbids"),
                codes(bleach(cloth, "sheet: {with: chlorine bleach, " + plan + "two lines}")));
        assertEquals(
                Set.of(),
                codes(bleach(cloth, "sheet: {with: oxygen bleach, " + plan + "two lines}")));
        assertEquals(
                Set.of("bleach-label-forbids"),
                codes(bleach(cloth, "sheet: {with: oxygen bleach, " + plan + "crossed}")));
    }

    @Test
    void theSameIsEqual() {
        String cloth = "sheet: {fibre: cotton, " + SIZE + "}";
        String plan = "sheet: {with: oxygen bleach, colour: white}";
        assertEquals(bleach(cloth, plan).figures(), bleach(cloth, plan).figures());
    }
}
