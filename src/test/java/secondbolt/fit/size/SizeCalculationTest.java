package secondbolt.fit.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.figure.Figures;
import secondbolt.file.json.Json;
import secondbolt.garment.Serves;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.wearer.BodyMeasure;
import secondbolt.wearer.ChosenSize;
import secondbolt.wearer.Passage;
import secondbolt.wearer.Wearer;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Open;

class SizeCalculationTest {
    private static SizeResult work(String... lines) {
        return SizeCalculation.work(Written.input("cm", lines));
    }

    private static List<String> open(SizeResult result) {
        return result.open().stream().map(Open::what).toList();
    }

    @Test
    void saysWhichInputItLacks() {
        SizeResult nothing = work();
        assertEquals(Optional.empty(), nothing.size());
        assertEquals(List.of(), nothing.measurements());
        assertEquals(List.of(), nothing.suggestions());
        assertEquals(
                List.of(
                        "who wears it",
                        "the pattern's size chart",
                        "the finished garment's measurements"),
                open(nothing));
        assertEquals(
                List.of("the pattern's size chart", "the finished garment's measurements"),
                open(work("wearer: {age: adult, measurements: {bust: 100}}")));
        assertEquals(
                List.of("the finished garment's measurements", "the wearer's high bust"),
                open(
                        work(
                                "wearer: {age: adult, measurements: {bust: 100}}",
                                "pattern: {size: M, sizes: {size: [M], bust: [98]}}")));
        assertEquals(
                List.of("the wearer's hip"),
                open(
                        work(
                                "wearer: {age: adult, measurements: {hip: unknown}}",
                                "pattern: {sizes: {size: [M], hip: [98]}, finished: {hip: 104}}")));
    }

    @Test
    void asksForTheAgeAndNeverTakesItAsAdult() {
        SizeResult result =
                work("wearer: {measurements: {bust: 100}}", "pattern: {finished: {bust: 101}}");
        assertTrue(open(result).contains("the wearer's age"));
        assertEquals(
                List.of("wearer-age-not-told CAUTION"),
                result.findings().stream().map(f -> f.code() + " " + f.level()).toList());
        assertEquals("wearer", result.findings().get(0).about().words());
        assertEquals(Optional.empty(), result.measurements().get(0).usual());
        assertEquals(Optional.of(Length.ofMillimetres(10)), result.measurements().get(0).ease());
    }

    @Test
    void doesNotJudgeAChildsEaseByGrownPeoplesFigures() {
        SizeResult result =
                work(
                        "wearer: {age: 6, measurements: {chest: 60}}",
                        "pattern: {finished: {chest: 61}}");
        assertEquals(1, result.findings().size());
        assertEquals("ease-of-a-child", result.findings().get(0).code());
        assertTrue(result.findings().get(0).text().contains("not judged"));
    }

    @Test
    void tellsTheSizeItWorksWithWhereNoneIsWritten() {
        SizeResult result =
                work(
                        "wearer: {age: adult, measurements: {bust: 97, high bust: 93}}",
                        "pattern: {sizes: {size: [S, M], bust: [90, 97]}}");
        assertEquals(Optional.of("M"), result.size());
        assertEquals("M", result.assumed().get(0).value());
    }

    @Test
    void tellsWhatABlendRedraws() {
        SizeInput.Pieces pieces =
                new SizeInput.Pieces(
                        Map.of(),
                        List.of("side"),
                        Map.of(),
                        Map.of(),
                        Map.of(),
                        SizeInput.Made.UNKNOWN);
        SizeInput input =
                Written.input(
                        "cm",
                        "pattern:",
                        "  sizes: {size: [16, 18], bust: [98, 103], hip: [109, 114]}",
                        "  size: {bust: 18, hip: 16}");
        SizeResult result = SizeCalculation.work(Written.with(input, pieces));
        assertEquals(Optional.of("bust 18, hip 16"), result.size());
        assertEquals(
                List.of(
                        "From the bust line down to the hip line redraw from size 18 to size 16"
                                + " along the seam `side`, on every piece with that seam, its facing"
                                + " and lining too."),
                result.redraw());
    }

    /** How far down the waist lies is not known, so a taper that is written adds nothing there. */
    @Test
    void tellsThatATaperIsNotCountedWhereItsPlaceIsNotKnown() {
        SizeInput.Pieces tapered =
                new SizeInput.Pieces(
                        Map.of(),
                        List.of("side"),
                        Map.of(),
                        Map.of(BodyMeasure.HIP, Length.ofMillimetres(20)),
                        Map.of(),
                        SizeInput.Made.UNKNOWN);
        SizeInput input =
                Written.input(
                        "cm",
                        "wearer: {age: adult, measurements: {waist: 84, hip: 108}}",
                        "pattern: {size: M, sizes: {size: [M], waist: [82], hip: [106]}}");
        String told = "The taper that is written already is counted at the hip alone";
        String text =
                SizeCalculation.work(Written.with(input, tapered)).suggestions().get(0).text();
        assertTrue(text.contains(told), text);
        SizeInput.Pieces plain =
                new SizeInput.Pieces(
                        Map.of(),
                        List.of("side"),
                        Map.of(),
                        Map.of(),
                        Map.of(),
                        SizeInput.Made.UNKNOWN);
        String without =
                SizeCalculation.work(Written.with(input, plain)).suggestions().get(0).text();
        assertFalse(without.contains(told), without);
    }

    @Test
    void takesTheSizeOfItsHeightForWhatABlendDoesNotName() {
        ChosenSize blend =
                ChosenSize.blended(Map.of(BodyMeasure.BUST, "18", BodyMeasure.HIP, "16"));
        assertEquals(Optional.of("18"), blend.at(BodyMeasure.BACK_WAIST_LENGTH));
        assertEquals(Optional.of("18"), blend.at(BodyMeasure.HIGH_BUST));
        assertEquals(Optional.of("16"), blend.at(BodyMeasure.INSIDE_LEG));
        assertEquals(Optional.empty(), blend.at(BodyMeasure.WAIST));
        assertEquals(Optional.empty(), blend.at(BodyMeasure.HEAD));
        assertEquals(Optional.of("12"), ChosenSize.of("12").at(BodyMeasure.HEAD));
    }

    @Test
    void asksForALineWhereNoPieceHasOne() {
        SizeResult result =
                work(
                        "wearer: {age: adult, measurements: {bust: 96, back waist length: 44}}",
                        "pattern: {size: M, sizes: {size: [M], bust: [96], back waist length:"
                                + " [42]}}");
        SizeResult.Suggestion suggestion = result.suggestions().get(0);
        assertEquals(Optional.of("- {lengthen: body, by: 2 cm}"), suggestion.yaml());
        assertTrue(suggestion.text().contains("draw one named `body`"), suggestion.text());
        assertTrue(suggestion.text().contains("facings and linings"), suggestion.text());
    }

    @Test
    void knowsWhatALineAlters() {
        assertEquals(
                Optional.of(BodyMeasure.BACK_WAIST_LENGTH), SizeCalculation.alteredAt(Serves.BODY));
        assertEquals(
                Optional.of(BodyMeasure.BACK_WAIST_LENGTH),
                SizeCalculation.alteredAt(Serves.WAIST));
        assertEquals(Optional.of(BodyMeasure.ARM_LENGTH), SizeCalculation.alteredAt(Serves.SLEEVE));
        assertEquals(Optional.empty(), SizeCalculation.alteredAt(Serves.HIP));
    }

    @Test
    void letsAnOpeningPassTheLargestPartOfTheBody() {
        Optional<Wearer> wearer =
                Written.input(
                                "cm",
                                "wearer: {measurements: {head: 57, bust: 96, chest: 98, hip:"
                                        + " unknown}}")
                        .wearer();
        assertEquals(Optional.of(Length.ofMillimetres(570)), Passage.HEAD.girth(wearer));
        assertEquals(Optional.of(Length.ofMillimetres(980)), Passage.BUST.girth(wearer));
        assertEquals(Optional.empty(), Passage.HIPS.girth(wearer));
        assertEquals(Optional.empty(), Passage.FOOT.girth(Optional.empty()));
        assertEquals("the wearer's hip", Passage.HIPS.open("waist", Tape.CENTIMETRE).what());
    }

    @Test
    void givesItsFiguresToOtherPrograms() {
        SizeResult result =
                work(
                        "wearer: {age: adult, measurements: {bust: 101}}",
                        "pattern: {size: 18, sizes: {size: [16, 18], bust: [98, 103]},"
                                + " finished: {bust: 117}}");
        Map<String, Object> figures = result.addTo(new Figures()).asMap();
        assertEquals(List.of("size", "measurements", "suggestions"), List.copyOf(figures.keySet()));
        assertTrue(
                Json.write(figures)
                        .replaceAll("\\s+", " ")
                        .contains(
                                "\"name\": \"bust\", \"body_mm\": 1010, \"pattern_mm\": 1030,"
                                        + " \"finished_mm\": 1170, \"ease_mm\": 160,"
                                        + " \"nearest\": \"18\""),
                Json.write(figures));
    }

    private static List<String> yaml(SizeResult result) {
        return result.suggestions().stream().flatMap(s -> s.yaml().stream()).toList();
    }

    /** How much the side is to be altered; there is no line to paste while no side is known. */
    private static List<String> widths(SizeResult result) {
        assertEquals(List.of(), yaml(result));
        return result.suggestions().stream()
                .map(
                        s ->
                                (s.by().isNegative() ? "narrow by " : "widen by ")
                                        + Tape.CENTIMETRE.print(s.by().size()))
                .toList();
    }

    @Test
    void asksWhichEdgesAreTheSideBeforeALineIsPasted() {
        String asked =
                work(
                                "wearer: {age: adult, measurements: {bust: 98, high bust: 94}}",
                                "pattern: {size: M, sizes: {size: [M], bust: [103]}}")
                        .suggestions()
                        .get(0)
                        .text();
        assertTrue(asked.contains("as `meaning: {…: side}`"), asked);
    }

    /**
     * By the chart the size is 5 cm larger at the bust than the body; the least ease of any source
     * is 1 1/2 in, 3.8 cm on a metric tape (Central Washington University costume text, ch. 16).
     */
    @Test
    void narrowsNoFurtherThanTheFinishedGarmentHasEase() {
        String wearer = "wearer: {age: adult, measurements: {bust: 98, high bust: 94}}";
        String pattern = "pattern: {size: M, sizes: {size: [M], bust: [103]}";
        assertEquals(List.of("narrow by 5 cm"), widths(work(wearer, pattern + "}")));
        assertEquals(
                List.of("narrow by 5 cm"),
                widths(work(wearer, pattern + ", finished: {bust: 117}}")));
        SizeResult close = work(wearer, pattern + ", finished: {bust: 103}}");
        assertEquals(List.of("narrow by 1.2 cm"), widths(close));
        assertTrue(
                close.suggestions().get(0).text().contains("it is 5 cm larger than the body there"),
                close.suggestions().get(0).text());
        assertEquals(List.of(), widths(work(wearer, pattern + ", finished: {bust: 102}}")));
        assertEquals(
                List.of("widen by 2.8 cm"),
                widths(work(wearer, pattern + ", finished: {bust: 99}}")));
    }

    @Test
    void aChildsGarmentIsNotNarrowedBelowTheChild() {
        assertEquals(
                List.of("narrow by 1 cm"),
                widths(
                        work(
                                "wearer: {age: 6, measurements: {chest: 60}}",
                                "pattern: {size: M, sizes: {size: [M], chest: [64]},"
                                        + " finished: {chest: 61}}")));
    }

    /** The hip has 5.6 cm of ease, 5 are the least: the side has only 6 mm to spare. */
    @Test
    void countsAFinishedGirthThatTheChartHasNoRowFor() {
        assertEquals(
                List.of("narrow by 0.6 cm"),
                widths(
                        work(
                                "wearer: {age: adult, measurements: {bust: 98, high bust: 94,"
                                        + " hip: 106}}",
                                "pattern: {size: M, sizes: {size: [M], bust: [103]},"
                                        + " finished: {bust: 117, hip: 111.6}}")));
    }

    @Test
    void asksWhichSizeTheWaistOfABlendIs() {
        String[] lines = {
            "wearer: {age: adult, measurements: {bust: 103, high bust: 99, waist: 84, hip: 109}}",
            "pattern:",
            "  sizes: {size: [16, 18], bust: [98, 103], waist: [80, 85], hip: [109, 114]}",
            "  size: {bust: 18, hip: 16}"
        };
        List<Finding> asked =
                work(lines).findings().stream()
                        .filter(f -> f.code().equals("size-blend-incomplete"))
                        .toList();
        assertEquals(1, asked.size());
        assertTrue(
                asked.get(0).text().contains("does not say which size the waist is"),
                asked.get(0).text());
        assertTrue(
                asked.get(0).remedy().contains("`size: {bust: 18, waist: 18, hip: 16}`"),
                asked.get(0).remedy());
        lines[3] = "  size: {bust: 18, waist: 18, hip: 16}";
        assertTrue(
                work(lines).findings().stream()
                        .noneMatch(f -> f.code().equals("size-blend-incomplete")));
    }
}
