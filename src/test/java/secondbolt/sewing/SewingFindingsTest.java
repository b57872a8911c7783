package secondbolt.sewing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Worksheet;

class SewingFindingsTest {
    private static final String SKIRT =
            "pattern: {seam allowance: {of: 1, included: false}, pieces: {front: {cut: pair,"
                    + " rectangle: [30, 60]}, back: {cut: pair, rectangle: [30, 60]}}, seams:"
                    + " [[front.left, back.left]]}";

    private static Worksheet sheet(String... more) {
        String[] lines = Stream.concat(Stream.of(SKIRT), Stream.of(more)).toArray(String[]::new);
        return Sewn.sheet("cm", lines).orElseThrow();
    }

    private static List<String> codes(Worksheet sheet) {
        return sheet.findings().stream().map(Finding::code).toList();
    }

    /** A French seam takes 3/8 and 1/4 in, 5/8 in all: Oklahoma State University Extension. */
    @Test
    void tellsThatAFrenchSeamWantsMoreThanIsThere() {
        Worksheet sheet = sheet("sewing: {finish: french, frays: much}");
        assertEquals(List.of("sewing-allowance-too-narrow"), codes(sheet));
        String remedy = sheet.findings().get(0).remedy();
        assertTrue(remedy.contains("0.5 cm more"), remedy);
        assertTrue(remedy.contains("`finish: zigzag`"), remedy);
    }

    /** Fashion student notes: pinking does not by itself stop fraying. */
    @Test
    void tellsThatPinkingDoesNotStopFraying() {
        assertEquals(
                List.of("sewing-edge-frays"),
                codes(sheet("sewing: {finish: pinked, frays: little}")));
        assertEquals(List.of(), codes(sheet("sewing: {finish: pinked, frays: hardly}")));
    }

    /** Not knowing is no fault, and it is asked. */
    @Test
    void asksHowItFrays() {
        Worksheet sheet = sheet("sewing: {finish: pinked, frays: unknown}");
        assertEquals(List.of(), codes(sheet));
        assertEquals(1, sheet.open().stream().filter(o -> o.what().contains("frays")).count());
    }

    /** What is only taken is never found fault with; each default is told. */
    @Test
    void tellsEachDefault() {
        Worksheet sheet = sheet();
        assertEquals(List.of(), codes(sheet));
        List<String> assumed = sheet.assumed().stream().map(a -> a.what()).toList();
        assertTrue(assumed.contains("stitch of the seams"), assumed.toString());
        assertTrue(assumed.contains("finish of the seams"), assumed.toString());
        assertTrue(assumed.contains("thread for ends, bobbins and trials"), assumed.toString());
    }

    /** Watson, Textiles and Clothing, 1907: flannel is never folded twice. */
    @Test
    void foldsNoWoolTwice() {
        Worksheet sheet =
                sheet(
                        "cloth: {blanket: {size: [200, 200], fibre: wool, weight: 400 g/m2,"
                                + " flaws: none}}",
                        "sewing: {finish: flat felled, frays: little}");
        assertTrue(codes(sheet).contains("sewing-wool-folded-twice"), codes(sheet).toString());
    }

    @Test
    void sewsAKnitWithAStitchThatGives() {
        String knit =
                "cloth: {jersey: {size: [150, 200], stretch: {across: 40 %}, weight: 160 g/m2,"
                        + " flaws: none}}";
        assertTrue(
                codes(sheet(knit, "sewing: {stitch: lockstitch}"))
                        .contains("sewing-straight-on-knit"));
        assertFalse(codes(sheet(knit)).contains("sewing-straight-on-knit"));
        assertTrue(
                sheet(knit).gives().needs().stream()
                        .anyMatch(need -> need.item().contains("ball point 90")));
    }

    /** Polyester stays pale in the bath, so its thread is bought after it. */
    @Test
    void buysThreadAfterTheBath() {
        var thread = sheet("sewing: {thread: {colour: slate}}").gives().needs().get(0);
        assertEquals("thread, polyester, slate", thread.item());
        assertEquals("dry", thread.buyAfter().orElseThrow().step());
    }

    /** Much fraying is neatened before handling, else after the fitting. */
    @Test
    void neatensAFrayingClothAtOnce() {
        assertEquals("mark", neatenFollows("sewing: {frays: much}"));
        assertEquals("fit on", neatenFollows("sewing: {frays: little}"));
    }

    private static String neatenFollows(String line) {
        return sheet(line).gives().steps().stream()
                .filter(step -> step.name().equals("neaten"))
                .findFirst()
                .orElseThrow()
                .follows()
                .get(0)
                .step();
    }
}
