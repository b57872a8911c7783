package secondbolt.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Open;
import secondbolt.worksheet.Worksheet;

/** What a maker does not know is worked out meanwhile, and asked. */
class UnknownTest {
    private static Workings worked(String units, String... lines) {
        String text = "title: Apron\nunits: " + units + "\n" + String.join("\n", lines) + "\n";
        Mistakes mistakes = new Mistakes();
        var workings =
                new Workshop(Topics.all(LayDesk.inMemory()))
                        .work(SourceFile.of("project.yaml", text), "apron", mistakes);
        assertEquals(List.of(), mistakes.inOrder());
        return workings.orElseThrow();
    }

    private static List<Open> open(Workings workings) {
        return workings.worksheets().stream().flatMap(sheet -> sheet.open().stream()).toList();
    }

    private static Open open(Workings workings, String what) {
        List<Open> found = open(workings).stream().filter(o -> o.what().equals(what)).toList();
        assertEquals(1, found.size(), what + " among " + open(workings));
        return found.get(0);
    }

    private static List<Finding> found(Workings workings, String code) {
        return workings.findings().stream().filter(f -> f.code().equals(code)).toList();
    }

    private static final String BAND =
            "closures: {front band: {length: 60, buttons: 6, button: {across: 12 mm, thick: 3 mm},"
                    + " first: 2, last: 10, holes: upright, laps: right over left, extension: 2}}";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "button: {across: 12 mm, thick: 3 mm} | button: unknown | front band: button",
                "across: 12 mm | across: unknown | front band: button, across",
                "thick: 3 mm | thick: unknown | front band: button, thick",
                "first: 2 | first: unknown | front band: first",
                "last: 10 | last: unknown | front band: last",
                "holes: upright | holes: unknown | front band: holes",
                "laps: right over left | laps: unknown | front band: laps",
                "extension: 2 | extension: unknown | front band: extension",
                "buttons: 6 | buttons: unknown | front band: buttons",
                "buttons: 6 | largest gap: unknown | front band: largest gap",
            })
    void spreadsTheButtonsMeanwhile(String known, String unknown, String what) {
        Workings workings = worked("cm", BAND.replace(known, unknown));
        assertTrue(open(workings, what).blocks().contains("taken meanwhile: "));
        assertFalse(open(workings, what).findOut().isEmpty());
        assertEquals(1, found(workings, "closure-taken-meanwhile").size());
        assertEquals(List.of(), workings.stops());
        Worksheet closures =
                workings.worksheets().stream()
                        .filter(sheet -> sheet.name().equals("closures"))
                        .findFirst()
                        .orElseThrow();
        assertFalse(closures.sheets().isEmpty());
    }

    /** A cuff of 6 cm holds no last button 10 cm from its end, so the ends are ranges. */
    @Test
    void spreadsThemOnAShortPlacketToo() {
        Workings workings =
                worked(
                        "in",
                        "closures: {cuff: {length: 2 1/2, buttons: 2, button: unknown, first:"
                                + " unknown, last: unknown, holes: unknown, laps: unknown, extension:"
                                + " unknown}}");
        assertEquals(6, open(workings).size());
        Workings noLength = worked("cm", BAND.replace("length: 60", "on: unknown"));
        open(noLength, "front band: the length of the placket");
    }

    /** Shirts: 3/8 to 5/8 in; what is cut deeper can be cut back. */
    @Test
    void turnsUpTheDeepestUsualHemMeanwhile() {
        String pattern = "pattern: {pieces: {front: {cut: pair, rectangle: [10, 30]}}}";
        Workings shirt =
                worked(
                        "in",
                        pattern,
                        "hems: {hem: {on: [front.bottom], depth: unknown, turned: once, for:"
                                + " shirt}}");
        assertTrue(open(shirt, "hem: depth").blocks().contains("taken meanwhile: ⅝ in"));
        assertEquals(1, found(shirt, "hem-taken-meanwhile").size());
        Workings other =
                worked(
                        "cm",
                        pattern,
                        "hems: {hem: {on: [front.bottom], depth: unknown, turned: unknown}}");
        assertTrue(open(other, "hem: depth").blocks().contains("taken meanwhile: 5 cm"));
        assertTrue(open(other, "hem: turned").blocks().contains("twice"));
    }

    @Test
    void takesNoClothForSoundThatNobodyLookedOver() {
        Workings unknown = worked("cm", "cloth: {sheet: {size: [150, 213], flaws: unknown}}");
        open(unknown, "sheet: flaws");
        assertEquals(1, found(unknown, "cloth-not-surveyed").size());
        assertTrue(
                unknown.worksheets().get(0).assumed().stream()
                        .noneMatch(a -> a.what().startsWith("flaws")));
        Workings none = worked("cm", "cloth: {sheet: {size: [150, 213], flaws: none}}");
        assertEquals(List.of(), found(none, "cloth-not-surveyed"));
    }

    /** Whatever may be left out: as if it were, and asked. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cloth: {sheet: {size: [150, 213], known by: unknown}} | sheet: known by",
                "cloth: {sheet: {size: [150, 213], trim: {left: unknown}}} | sheet: trim, left",
                "cloth: {sheet: {size: [150, 213]}}, lay: {gap: unknown} | lay: gap",
                "pattern: {pieces: {f: {cut: 1, rectangle: [9, 9], grain: unknown}}} | pieces: f, grain",
            })
    void asksWhatWasLeftOpen(String lines, String what) {
        open(worked("cm", lines.replace("}}, lay", "}}\nlay")), what);
    }

    /** A twin sheet and a curtain in inches; linen in metric sizes, and what says its unit. */
    @ParameterizedTest
    @ValueSource(strings = {"[66, 96]", "[81, 96]", "[52, 84]", "[108, 102]"})
    void asksAboutASheetOfInchesInAFileInCentimetres(String size) {
        Finding told =
                found(worked("cm", "cloth: {sheet: {size: " + size + "}}"), "cloth-size-in-inches")
                        .get(0);
        assertEquals(Finding.Level.CAUTION, told.level());
        List<String> advised =
                List.of(told.remedy().split("`", -1)).stream()
                        .filter(s -> s.startsWith("size"))
                        .toList();
        assertEquals(2, advised.size());
        for (String line : advised) {
            assertEquals(
                    List.of(),
                    found(worked("cm", "cloth: {sheet: {" + line + "}}"), "cloth-size-in-inches"));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[50, 70]", "[50, 100]", "[70, 140]", "[60, 120]", "[75, 100]", "[80, 80]",
                "[66 cm, 96 cm]", "[48.5, 83]", "[132, 214]", "[45, 60]", "[30, 40]", "unknown"
            })
    void asksAboutNoTowelNorPillowcase(String size) {
        assertEquals(
                List.of(),
                found(
                        worked("cm", "cloth: {sheet: {size: " + size + "}}"),
                        "cloth-size-in-inches"));
    }

    /** A file in inches is advised in inches; what is told in both systems names inches first. */
    @Test
    void advisesNoMillimetresToAnInchMaker() {
        Workings workings =
                worked(
                        "in",
                        "wearer: {age: 5, measurements: {bust: 26, hip: 27, head: 21}}",
                        "machine: {longest hole: 1/2}",
                        "cloth: {sheet: {size: [66, 96], sides measured: {left: 96, right: 95},"
                                + " prewash: unknown, stretch: unknown, nap: unknown, flaws: [{what:"
                                + " hole, at: [20, 20], round: 2}]}, old: {size: [40, 60], edges:"
                                + " {left: hem, top: bound}, flaws: unknown}}",
                        "pattern: {seam allowance: {of: 5/8, included: no}, sizes: {size: [5, 6],"
                                + " bust: [24, 25]}, size: 6, finished: {bust: 26}, pieces: {front:"
                                + " {cut: 1, rectangle: [14, 24]}, back: {cut: 1, rectangle: [13,"
                                + " 24]}, tie: {cut: 2 alike, rectangle: [1, 30]}}, seams:"
                                + " [[front.right, back.left], [front.top, back.top]], openings:"
                                + " [{what: neck, edges: front.top, over: head}]}",
                        "closures: {band: {on: front.left, buttons: 4, button: {across: 1, thick:"
                                + " 1/8}, first: 1/4, last: 1/4, holes: upright, laps: left over"
                                + " right, extension: 1/4, bulk: [{at: 8}]}, neck: {length: 4, ties:"
                                + " 1, first: unknown}, side: {length: 7, snaps: 5, first: 1/2, last:"
                                + " 1/2, laps: front over back, extension: unknown, worn: side}}",
                        "hems: {hem: {on: [front.bottom, back.bottom], depth: 3, turned: twice, for:"
                                + " dress}, sleeve: {on: [tie.bottom], depth: unknown, turned:"
                                + " unknown}}",
                        "nightwear: unknown");
        assertTrue(workings.findings().size() > 20, workings.findings().size() + " findings");
        List<String> advice = new ArrayList<>();
        workings.findings().forEach(f -> advice.add(f.remedy()));
        open(workings).forEach(o -> advice.add(o.findOut()));
        for (String one : advice) {
            assertFalse(
                    one.matches("(?s).*\\d ?(mm|cm)\\b.*")
                            && !one.matches("(?s).*[\\d¼½¾⅛⅜⅝⅞₆] in\\b.*"),
                    one);
            for (String part : one.split("`", -1)) {
                assertFalse(part.matches("[a-z ]+: .*\\d ?(mm|cm)\\b.*"), one);
            }
        }
    }

    private static String told(String line) {
        Mistakes mistakes = new Mistakes();
        new Workshop(Topics.all(LayDesk.inMemory()))
                .work(
                        SourceFile.of("project.yaml", "title: T\nunits: cm\n" + line + "\n"),
                        "t",
                        mistakes);
        return mistakes.inOrder().stream()
                .map(m -> m.found() + "; " + m.right())
                .reduce((a, b) -> a + "\n" + b)
                .orElse("");
    }

    /** No size, design or edge is called unknown. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pattern: {size: unknown, pieces: {f: {cut: 1, rectangle: [9, 9]}}} | pattern: size",
                "pattern: {size: {bust: unknown, hip: 12}, pieces: {f: {cut: 1, rectangle: [9, 9]}}} | size: bust",
                "pattern: {pieces: {f: {cut: 1, rectangle: [9, 9]}}};designs: {a: {uses: [f]}};make: unknown | make",
            })
    void takesUnknownForNoName(String lines, String what) {
        open(worked("cm", lines.split(";")), what);
    }

    @Test
    void refusesAFoldThatIsNotKnown() {
        String piece = "pattern: {pieces: {f: {cut: 1, rectangle: [9, 9]%s}}}";
        String fold = told(piece.formatted(", fold: unknown"));
        assertTrue(fold.startsWith("`fold: unknown`; "), fold);
        assertTrue(fold.contains("`fold: none`"), fold);
        assertEquals("", told(piece.formatted(", fold: none")));
        String notch = told(piece.formatted(", notches: [{edge: unknown, at: 3}]"));
        assertTrue(notch.contains("the name of something in this file"), notch);
    }

    /** Nothing added, or none drawn that is to be added: two cuts, so it is asked. */
    @ParameterizedTest
    @ValueSource(strings = {"none", "no"})
    void asksWhichOfTwoNoSeamAllowanceIs(String word) {
        String told =
                told(
                        "pattern: {seam allowance: "
                                + word
                                + ", pieces: {f: {cut: 1, rectangle: [9, 9]}}}");
        assertTrue(told.contains("`seam allowance: {of: none, included: no}`"), told);
        assertTrue(told.contains("`{of: …, included: no}`"), told);
    }
}
