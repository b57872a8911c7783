package secondbolt.dye;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.dye.bath.DyeBatch;
import secondbolt.dye.guide.Act;
import secondbolt.dye.guide.DyeOrder;
import secondbolt.dye.guide.DyePrint;
import secondbolt.dye.guide.KitchenWords;
import secondbolt.measure.Tape;
import secondbolt.project.Workings;
import secondbolt.task.Hazard;

/** What a dye sheet says agrees with her leaflet, with the fibre and with the wash day. */
class DyeSheetWordsTest {
    private static Workings worked(String cloth, String dye) {
        return Dyed.worked("cloth: {Tuch: {size: unknown, mass: 400 g, " + cloth + "}}", dye);
    }

    private static DyeBatch batch(String cloth, String dye) {
        return worked(cloth, "dye: {cloth: [Tuch], over: Weiß, " + dye + "}")
                .came(DyeTopic.NAME)
                .orElseThrow()
                .get(0);
    }

    private static List<Act> acts(String cloth, String dye) {
        return DyeOrder.of(batch(cloth, dye), new DyePrint(Tape.CENTIMETRE));
    }

    private static Act act(List<Act> acts, String title) {
        return acts.stream()
                .filter(act -> act.title().startsWith(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError(title + " among " + titles(acts)));
    }

    private static List<String> titles(List<Act> acts) {
        return acts.stream().map(Act::title).toList();
    }

    private static boolean has(List<Act> acts, String title) {
        return titles(acts).stream().anyMatch(t -> t.startsWith(title));
    }

    private static List<String> codes(String cloth, String dye) {
        return Dyed.codes(worked(cloth, "dye: {cloth: [Tuch], over: Weiß, " + dye + "}"));
    }

    /** A dyer's reference site: 60 °C or hotter, boiling best; elastane is washed at 40 °C. */
    @Test
    void soaksReactiveDyeNoHotterThanTheClothBears() {
        List<Act> cotton = acts("fibre: cotton", "class: reactive, depth: medium");
        assertTrue(act(cotton, "Soak hot").hazards().contains(Hazard.HOT_BATH));
        List<Act> jersey =
                acts("fibre: {cotton: 95 %, elastane: 5 %}", "class: reactive, depth: medium");
        assertFalse(has(jersey, "Soak hot"));
        assertTrue(
                act(jersey, "Soak as warm")
                        .notes()
                        .get(0)
                        .contains("Tuch 40 °C (104 °F) (elastane)"));
        List<Act> labelled =
                acts("fibre: cotton, care label: {wash: 30}", "class: reactive, depth: medium");
        assertTrue(
                act(labelled, "Soak as warm")
                        .notes()
                        .get(0)
                        .contains("Tuch 30 °C (86 °F) (its label)"));
    }

    /**
     * 400 g in a bath of 8 l at a leaflet's 50 g/l: 400 g of salt at 1.2 g/ml (from memory) are 333
     * ml, a third over a cup of 250 ml (derived); soda ash is never told by cups.
     */
    @Test
    void tellsSaltAloneInCupsAndWhoseCup() {
        DyeBatch salted =
                batch(
                        "fibre: cotton",
                        "class: reactive, depth: pale, vessel: 10 l, leaflet: {salt: 50 g/l}");
        String words =
                KitchenWords.of(salted, salted.recipe().orElseThrow(), Tape.CENTIMETRE)
                        .orElseThrow();
        assertTrue(words.contains("about 1⅓ cups"), words);
        assertTrue(words.contains("cup 250 ml"), words);
        assertTrue(words.contains("Soda ash: weigh it"), words);
        DyeBatch acid = batch("fibre: wool", "class: acid, depth: medium");
        assertEquals(
                Optional.empty(),
                KitchenWords.of(acid, acid.recipe().orElseThrow(), Tape.CENTIMETRE));
    }

    /** What her leaflet leaves out is no act either. */
    @Test
    void hasNoActForWhatTheLeafletLeavesOut() {
        List<Act> reactive =
                acts(
                        "fibre: cotton",
                        "class: reactive, depth: pale, leaflet: {salt: none, soda: none}");
        assertFalse(has(reactive, "Salt in"));
        assertFalse(has(reactive, "Soda ash"));
        List<Act> direct =
                acts(
                        "fibre: cotton",
                        "class: direct, depth: pale, leaflet: {salt: none, fixative: none}");
        assertFalse(has(direct, "Salt in"));
        assertFalse(has(direct, "Fix it"));
        List<Act> acid =
                acts(
                        "fibre: wool",
                        "class: acid, depth: medium, leaflet: {acid: none, soda: 2 g/l}");
        assertFalse(has(acid, "The acid"));
        assertTrue(act(acid, "Soda ash only").hazards().contains(Hazard.SODA_ASH));
    }

    /** Children's of Alabama, scald prevention: 120 °F scalds. */
    @Test
    void warnsOfScaldsWhereTheLeafletHasACoolDyeHot() {
        String in = "The cloth in";
        String salt = "Salt in";
        assertEquals(
                List.of(),
                act(acts("fibre: cotton", "class: reactive, depth: pale"), salt).hazards());
        List<Act> hot =
                acts(
                        "fibre: cotton",
                        "class: reactive, depth: pale, leaflet: {salt: none, heat: 80 C}");
        assertEquals(List.of(Hazard.HOT_BATH, Hazard.COOKER), act(hot, in).hazards());
    }

    @Test
    void tellsWhereTheLeafletIsNoneForItsClass() {
        String code = "dye-leaflet-and-class";
        assertTrue(
                codes("fibre: cotton", "class: reactive, depth: pale, leaflet: {soda: none}")
                        .contains(code));
        assertTrue(
                codes("fibre: cotton", "class: direct, depth: pale, leaflet: {heat: 30 C}")
                        .contains(code));
        assertTrue(
                codes("fibre: wool", "class: acid, depth: pale, leaflet: {acid: none}")
                        .contains(code));
        assertFalse(
                codes(
                                "fibre: cotton",
                                "class: reactive, depth: pale, leaflet: {soda: 5 g/l, heat: 60 C}")
                        .contains(code));
        assertTrue(
                codes("fibre: cotton", "class: direct, depth: pale, ratio: 5")
                        .contains("dye-bath-cramped"));
    }

    /** A dyer's reference site, answers on household dye: black takes two to four times as much. */
    @Test
    void doesNotMakeBlackOfPacketsForPale() {
        String code = "dye-packets-for-black";
        String dye = "class: household blend, packet: {dyes: 1 lb}, depth: ";
        assertTrue(codes("fibre: viscose", dye + "black").contains(code));
        assertFalse(codes("fibre: viscose", dye + "pale").contains(code));
    }

    /** A public sheet on dyeing polyester and cotton: easy-care cloth may take poorly. */
    @Test
    void tellsThatAFinishKeepsDyeOff() {
        String dye = "class: reactive, depth: pale";
        String code = "dye-finish-keeps-off";
        assertTrue(codes("fibre: cotton, finish: easy-care", dye).contains(code));
        assertFalse(codes("fibre: cotton, finish: starch", dye).contains(code));
    }

    /** Disperse dye is the one that polyester takes. */
    @Test
    void doesNotCallPolyesterThreadPaleInItsOwnDye() {
        assertFalse(
                codes("fibre: polyester", "class: disperse, packet: {dyes: 250 g}")
                        .contains("dye-leaves-polyester-pale"));
    }

    @Test
    void takesWhiteInAnyLanguageForNoColour() {
        assertFalse(
                codes("fibre: cotton", "class: direct, depth: pale")
                        .contains("dye-adds-to-its-colour"));
    }

    @Test
    void saysWhichFibreIsHarmed() {
        String text =
                Dyed.finding(
                                worked(
                                        "fibre: laine",
                                        "dye: {cloth: [Tuch], class: reactive, depth: dark}"),
                                "dye-harms")
                        .text();
        assertTrue(text.contains("wool is harmed: its alkali harms wool"), text);
    }

    /** Silk bears no hot wash, in the order of work as on the sheet. */
    @Test
    void washesNoSilkHot() {
        String wash =
                steps(
                        "fibre: silk",
                        "dye: {cloth: [Tuch], class: reactive, packet: {dyes: 250 g}}");
        assertFalse(wash.contains("60 °C"), wash);
        String elastane =
                steps(
                        "fibre: {cotton: 95 %, elastane: 5 %}",
                        "dye: {cloth: [Tuch], class: reactive, depth: pale}");
        assertTrue(elastane.contains("no hotter than the cloth bears (Tuch 40 °C"), elastane);
    }

    private static String steps(String cloth, String dye) {
        return Dyed.sheet(worked(cloth, dye)).gives().steps().stream()
                .filter(step -> step.name().equals("wash off"))
                .map(step -> step.text())
                .findFirst()
                .orElseThrow();
    }

    /**
     * A colour without a sheet is not dyed by one; powder is minded at the first step it is met.
     */
    @Test
    void sendsNobodyToASheetThatIsNotPrinted() {
        var steps =
                Dyed.sheet(worked("fibre: unknown", "dye: {cloth: [Tuch], class: reactive}"))
                        .gives()
                        .steps();
        String dye =
                steps.stream()
                        .filter(step -> step.name().equals("dye"))
                        .findFirst()
                        .orElseThrow()
                        .text();
        assertFalse(dye.contains("Dye by the dye sheet"), dye);
        assertTrue(dye.startsWith("No sheet yet for "), dye);
        assertTrue(steps.get(0).hazards().contains(Hazard.ASTHMA_OR_PREGNANCY));
        assertTrue(steps.get(0).hazards().contains(Hazard.POISON_HELP));
    }
}
