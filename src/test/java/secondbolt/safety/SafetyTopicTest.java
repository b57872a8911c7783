package secondbolt.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.project.Topics;
import secondbolt.project.Workshop;
import secondbolt.project.WrittenProject;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;
import secondbolt.worksheet.Worksheet;

/**
 * Cords of children. Source: 16 CFR 1120 (neck and hood none, waist 3 in = 76.2 mm) and EN
 * 14682:2007 (none at neck and hood up to seven, no free ends there up to fourteen, waist 14 cm).
 */
@SuppressWarnings("StringConcatToTextBlock") // a case of a table is one line
class SafetyTopicTest {
    private static final String FIVE = "wearer: {age: 5}\n";
    private static final String BODY =
            """
            pattern:
              seam allowance: {of: 1, included: false}
              pieces:
                front: {cut: 1, rectangle: [40, 50]}
            """;

    private static List<Worksheet> sheets(String text) {
        Mistakes mistakes = new Mistakes();
        return WrittenProject.read(
                        SourceFile.of("project.yaml", "title: Smock\nunits: cm\n" + text), mistakes)
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()))
                .workings("smock")
                .worksheets();
    }

    private static List<Finding> findings(String text) {
        return sheets(text).stream()
                .filter(sheet -> sheet.name().equals("safety"))
                .flatMap(sheet -> sheet.findings().stream())
                .toList();
    }

    private static List<String> told(String text) {
        List<String> told = new ArrayList<>();
        findings(text).forEach(f -> told.add(f.level() + " " + f.code()));
        return told;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "    neck tie: {cut: 2, rectangle: [3, 30]}\n",
                "    hood drawstring: {cut: 1, rectangle: [3, 90]}\n",
                "    Kapuzenkordel: {cut: 1, rectangle: [3, 90]}\n",
                "    cordon de capuche: {cut: 1, rectangle: [3, 90]}\n",
                "    hood cord: {cut: 1, box: [3, 90]}\n",
                "    tie: {cut: 2, rectangle: [3, 30]}\n  seams: [[tie.top, hood.left]]\n",
                "    tie: {cut: 2, rectangle: [3, 30]}\ncords: {tie: {at: neck}}\n",
                "    tie: {cut: 2, rectangle: [3, 30]}\ncords: {bow: {at: hood, of: tie}}\n",
                "closures: {neck: {length: 14, ties: 2, first: 2, last: 2}}\n",
                "closures: {bow: {on: hood.left, ties: 2, first: 2, last: 2}}\n",
                "closures: {bow: {length: 14, ties: 2, first: 2, last: 2}}\n"
                        + "cords: {bow: {at: neck, free: none}}\n",
                "hems: {hood drawstring: {on: [hood.left], depth: 2, turned: once}}\n",
                "hems: {drawstring casing: {on: [hood.left], depth: 2, turned: once}}\n",
                "hems: {Tunnelzug: {on: [hood.left], depth: 2, turned: once}}\n",
                "cords: {bought string: {at: hood, free: none}}\n"
            })
    void isAStopAtNeckAndHoodUpToSeven(String written) {
        String hood = "    hood: {cut: 2, rectangle: [3, 30]}\n";
        for (int age : new int[] {0, 5, 7}) {
            List<String> told = told("wearer: {age: " + age + "}\n" + BODY + hood + written);
            assertTrue(told.contains("STOP cord-at-the-neck"), age + written + told);
        }
        // Not told, and of no measured body: asked before the stop can be left out.
        List<String> untold = told(BODY + hood + written);
        assertTrue(untold.contains("STOP cord-at-the-neck-age-not-told"), written + untold);
        assertEquals(List.of(), told("wearer: {age: adult}\n" + BODY + hood + written));
    }

    /** Told to lie at the waist, but called and sewn where it strangles: said, not believed. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "    hood cord: {cut: 1, rectangle: [2, 90]}\n"
                        + "cords: {hood cord: {at: waist, free: 7}}\n",
                "    Kapuzenband: {cut: 1, rectangle: [2, 90]}\n"
                        + "cords: {Kapuzenband: {at: other, free: none}}\n",
                "hems: {drawstring casing: {on: [hood.left], depth: 2, turned: once}}\n"
                        + "cords: {drawstring casing: {at: hem, free: none}}\n"
            })
    void doesNotTakeAHoodCordForAnotherUnasked(String written) {
        String hood = BODY + "    hood: {cut: 2, rectangle: [3, 30]}\n";
        String called = "cord-called-otherwise";
        List<String> told = told("wearer: {age: 4}\n" + hood + written);
        assertTrue(told.contains("WARNING " + called), written + told);
        List<String> untold = told(hood + written);
        assertTrue(untold.contains("CAUTION " + called), written + untold);
        assertEquals(List.of(), told("wearer: {age: adult}\n" + hood + written));
        // A cord at the waist by name and by word is no contradiction.
        List<String> waist =
                told("wearer: {age: 4}\n" + hood + "cords: {waist cord: {at: waist, free: 7}}\n");
        assertTrue(waist.stream().noneMatch(t -> t.contains(called)), waist.toString());
    }

    @Test
    void asksTheAgeOfALargeBodyWithoutAStop() {
        String tie = BODY + "    neck tie: {cut: 2, rectangle: [3, 30]}\n";
        assertEquals(
                List.of("WARNING cord-at-the-neck-age-not-told"),
                told("wearer: {measurements: {bust: 96}}\n" + tie));
        assertEquals(
                List.of("STOP cord-at-the-neck-age-not-told"),
                told("wearer: {measurements: {bust: 59}}\n" + tie));
    }

    @Test
    void mayHaveNoFreeEndsAtTheNeckUpToFourteen() {
        String cord = "wearer: {age: 9}\n" + BODY + "cords: {string: {at: neck, free: %s}}\n";
        assertEquals(List.of("STOP cord-at-the-neck"), told(cord.formatted("4")));
        assertEquals(List.of("CAUTION cord-flat-at-the-neck"), told(cord.formatted("none")));
        assertEquals(List.of("WARNING cord-free-not-told"), told(cord.formatted("unknown")));
    }

    /** 3 in are 76.2 mm: 3 in pass, 3 1/4 in = 82.55 mm and 10 cm do not. */
    @Test
    void hangsFreeAtMostThreeInchesElsewhere() {
        String cord = FIVE + BODY + "cords: {string: {at: waist, free: %s}}\n";
        assertEquals(List.of("CAUTION cord-short"), told(cord.formatted("3 in")));
        assertEquals(List.of("WARNING cord-too-long"), told(cord.formatted("3 1/4 in")));
        assertEquals(List.of("WARNING cord-too-long"), told(cord.formatted("10")));
        assertEquals(List.of("WARNING cord-free-not-told"), told(cord.formatted("unknown")));
    }

    /** Four ties of 22 cm: 220 mm are more than 76 mm, whatever the place. */
    @Test
    void takesTheWholePieceAsFreeUnlessTold() {
        String ties = FIVE + BODY + "    tie: {cut: 4, rectangle: [3, 22]}\n";
        Finding long22 = findings(ties + "cords: {tie: {at: waist}}\n").get(0);
        assertEquals("cord-too-long", long22.code());
        assertTrue(long22.text().contains("22 cm"), long22.text());
        // 22 - 7 = 15 cm must be held.
        Finding held = findings(ties + "cords: {tie: {at: waist, free: 7}}\n").get(0);
        assertEquals("cord-sewn-down", held.code());
        assertTrue(held.text().contains("the other 15 cm"), held.text());
    }

    @Test
    void asksWhereItLies() {
        String tie = BODY + "    tie: {cut: 4, rectangle: [3, 22]}\n";
        assertEquals(List.of("WARNING cord-place-not-told"), told(FIVE + tie));
        assertEquals(List.of("CAUTION cord-place-not-told"), told(tie));
        assertEquals(List.of(), told(FIVE + tie + "cords: {tie: no}\n"));
        assertTrue(
                findings(FIVE + tie).get(0).remedy().contains("`cords: {tie: {at: waist, free: 7"));
    }

    @Test
    void stopsTheSheetsOfClosureAndPiece() {
        List<Finding> stops =
                findings(
                        FIVE
                                + BODY
                                + "    tie: {cut: 2, rectangle: [3, 30]}\n"
                                + "closures: {bow: {length: 9, ties: 1, first: 2, last: 7}}\n"
                                + "cords: {bow: {at: neck, of: tie}}\n");
        assertEquals(
                List.of(new Subject.Closure("bow"), new Subject.Piece("tie")),
                stops.stream().map(Finding::about).toList());
    }

    @Test
    void refusesAPieceThatIsNotThere() {
        Mistakes mistakes = new Mistakes();
        SourceFile file =
                SourceFile.of(
                        "project.yaml",
                        "title: Smock\nunits: cm\n" + BODY + "cords: {bow: {at: neck, of: tye}}\n");
        new Workshop(Topics.all(LayDesk.inMemory())).work(file, "smock", mistakes);
        assertEquals("one of front", mistakes.inOrder().get(0).right());
    }

    @Test
    void warnsOfALoopRoundAChildsNeck() {
        String loop = BODY + "    neck strap: {cut: 1, rectangle: [3, 50]}\n";
        assertEquals(List.of("WARNING loop-at-the-neck"), told(FIVE + loop));
        assertEquals(List.of(), told("wearer: {age: adult}\n" + loop));
    }

    @Test
    void asksWhetherAChildSleepsInIt() {
        List<Worksheet> asked = sheets(FIVE + BODY);
        assertTrue(
                asked.stream()
                        .flatMap(s -> s.open().stream())
                        .anyMatch(o -> o.what().equals("whether the child sleeps in it")));
        assertEquals(List.of(), told(FIVE + "nightwear: no\n" + BODY));
        List<Finding> rule = findings("wearer: {age: 6}\nnightwear: yes\n" + BODY);
        assertEquals(Level.WARNING, rule.get(0).level());
        // 91 cm round the chest, 122 cm long, as in the regulations' notes.
        assertTrue(rule.get(0).text().contains("91 cm round the chest and 122 cm long"));
        assertEquals(List.of(), told("wearer: {age: adult}\nnightwear: yes\n" + BODY));
        assertEquals(
                List.of("WARNING nightwear-of-a-child"),
                told(BODY + "    Nachthemd: {cut: 1, rectangle: [40, 90]}\n"));
    }

    /** One rule in the words and the other in the list, also where it stops several sheets. */
    @Test
    void namesOneRuleAndListsTheOther() {
        List<Finding> found =
                findings(
                        FIVE
                                + BODY
                                + "    tie: {cut: 2, rectangle: [3, 30]}\n"
                                + "cords: {tie: {at: neck}}\n");
        assertEquals(Level.STOP, found.get(0).level());
        assertTrue(found.get(0).text().contains("EN 14682"), found.toString());
        found.forEach(f -> assertTrue(!(f.text() + f.remedy()).contains("CFR"), f.toString()));
        assertTrue(found.get(0).sources().get(0).startsWith("16 CFR 1120"), found.toString());
    }

    /** Named in the words alone, while no cord is written; of a grown person's nothing is asked. */
    @Test
    void asksForACordThatOnlyTheWordsName() {
        String spoken = "summary: A hood with a drawstring in its edge.\n";
        assertEquals(List.of("CAUTION cord-only-spoken-of"), told(spoken + FIVE + BODY));
        String marked =
                BODY.replace(
                        "rectangle: [40, 50]",
                        "rectangle: [40, 50], marks: [{what: string comes out, at: [3, 4]}]");
        assertEquals(List.of("CAUTION cord-only-spoken-of"), told(FIVE + marked));
        assertEquals(List.of(), told(spoken + FIVE + BODY + "cords: none\n"));
        assertEquals(List.of(), told(spoken + "wearer: {age: adult}\n" + BODY));
        assertEquals(List.of(), told("summary: Corduroy, untied seams.\n" + FIVE + BODY));
    }
}
