package secondbolt.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import secondbolt.draw.paper.Paper;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.notebook.paper.Desk;
import secondbolt.notebook.paper.PaperChoice;
import secondbolt.project.ProjectSection;
import secondbolt.project.Topics;
import secondbolt.project.Workings;
import secondbolt.project.Workshop;
import secondbolt.worksheet.Finding;

/**
 * Each finding that can stop: what shows what is stopped says DO NOT CUT and why, on the page and
 * on paper; nothing else does, however the names lie inside each other.
 */
class StopsTest {
    /** Names inside names, and of other languages; each large enough for a sheet of its own. */
    private static final String PIECES =
            """
            pattern:
              rights: mine
              seam allowance: {of: 1, included: false}
              pieces:
                cuff: {cut: pair, rectangle: [40, 50], lines: {body: 20}}
                cuff facing: {cut: 1, rectangle: [30, 40]}
                Ärmel: {cut: 1, rectangle: [40, 50], lines: {body: 20}}
                Ärmelschlitz: {cut: 1, rectangle: [30, 42]}
            """;

    private static final String CLOTH = "cloth: {sheet: {size: [260, 300], prewash: done}}\n";

    private static Workings workings(String text) {
        return workings(text, LayDesk.inMemory());
    }

    private static Workings workings(String text, LayDesk desk) {
        Mistakes mistakes = new Mistakes();
        return new Workshop(Topics.all(desk))
                .work(
                        SourceFile.of("project.yaml", "title: Smock\nunits: cm\n" + text),
                        "smock",
                        mistakes)
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
    }

    private static List<PrintedSheet> sheets(Workings workings) {
        PaperChoice paper = PaperChoice.asked(Paper.A4, Desk.UNKNOWN);
        return workings.worksheets().stream()
                .flatMap(w -> w.sheets().stream())
                .map(s -> PrintedSheet.Asked.of(workings.heading(), workings.stops(), s, paper))
                .map(PrintedSheet::of)
                .toList();
    }

    private static Set<String> stopped(Workings workings) {
        Set<String> stopped = new TreeSet<>();
        for (PrintedSheet sheet : sheets(workings)) {
            boolean says = sheet.pages().toString().contains("DO NOT CUT");
            assertEquals(says, sheet.isStopped(), sheet.sheet().name());
            if (says) {
                stopped.add(sheet.sheet().name());
            }
        }
        return stopped;
    }

    private static Set<String> codes(Workings workings) {
        return workings.stops().stream().map(Finding::code).collect(Collectors.toSet());
    }

    /** The sections of the page that say that nothing may be cut. */
    private static Set<String> sections(Workings workings) {
        String page =
                SampleSite.text(
                        new Notebook(
                                        "0.1.0",
                                        ProjectSection.form(Topics.all(LayDesk.inMemory())),
                                        Map.of())
                                .make(List.of(workings), List.of(), Desk.UNKNOWN),
                        "smock/index.html");
        Set<String> stopped = new TreeSet<>();
        for (String section : page.split("<section id=\"", -1)) {
            String head = section.substring(0, Math.min(400, section.length()));
            if (head.contains("Do not cut.")) {
                stopped.add(section.substring(0, section.indexOf('"')));
            }
        }
        return stopped;
    }

    @Test
    void stopsNothingWhereAllIsWell() {
        Workings sound = workings(CLOTH + PIECES);
        assertEquals(Set.of(), codes(sound));
        assertEquals(Set.of(), stopped(sound));
        assertEquals(Set.of(), sections(sound));
    }

    @Test
    void aSeamThatNoLongerMeetsStopsItsTwoPiecesAndThePlanTheyLieOn() {
        Workings apart =
                workings(
                        CLOTH
                                + PIECES
                                + "  seams: [[cuff.right, Ärmel.left]]\n"
                                + "alterations: [{lengthen: body, by: 2, pieces: {Ärmel: 1}}]\n");
        assertEquals(Set.of("seam-apart"), codes(apart));
        assertEquals(
                Set.of(
                        "all-pieces",
                        "cutting-plan-sheet",
                        "piece-armel",
                        "piece-cuff",
                        "seam-card"),
                stopped(apart));
        assertEquals(Set.of("cutting", "fit", "lay", "sewing"), sections(apart));
    }

    @Test
    void aSeamThatDoesNotMeetAsDrawnLikewise() {
        Workings apart =
                workings(CLOTH + PIECES + "  seams: [[Ärmelschlitz.left, cuff facing.left]]\n");
        assertEquals(Set.of("seam-apart-as-drawn"), codes(apart));
        assertEquals(
                Set.of(
                        "all-pieces",
                        "cutting-plan-sheet",
                        "piece-armelschlitz",
                        "piece-cuff-facing",
                        "seam-card"),
                stopped(apart));
    }

    @Test
    void anOpeningThatTheHeadDoesNotPassStopsThePiecesRoundIt() {
        Workings narrow =
                workings(
                        CLOTH
                                + "wearer: {age: adult, measurements: {head: 57}}\n"
                                + PIECES
                                + "  openings: [{what: neck, edges: Ärmelschlitz.top, over:"
                                + " head}]\n");
        assertEquals(Set.of("opening-too-small"), codes(narrow));
        assertEquals(
                Set.of("all-pieces", "cutting-plan-sheet", "piece-armelschlitz"), stopped(narrow));
    }

    @Test
    void aStripIsStoppedForItsOwnEdgeAndNotForAnother() {
        String bands =
                """
                closures:
                  cuff: {on: cuff.right, extension: 2, buttons: 3, first: 2, last: 4,
                    button: {across: 15 mm, thick: 3 mm}, holes: upright, laps: right over left}
                  cuff band: {on: cuff.left, extension: 2, buttons: 3, first: 2, last: 4,
                    button: {across: 15 mm, thick: 3 mm}, holes: upright, laps: right over left}
                """;
        Workings apart =
                workings(CLOTH + PIECES + "  seams: [[cuff.right, cuff facing.left]]\n" + bands);
        assertEquals(Set.of("seam-apart-as-drawn"), codes(apart));
        Set<String> stopped = stopped(apart);
        assertTrue(stopped.contains("cuff"), stopped.toString());
        assertTrue(!stopped.contains("cuff-band") && !stopped.contains("cuff-test"));
    }

    @Test
    void aCuttingLineThatCrossesItselfStopsItsPieceAndEveryPlanOfTheDesign() {
        Workings crossed =
                workings(
                        CLOTH
                                + PIECES
                                + """
                                    slit:
                                      cut: 1
                                      outline:
                                        - {start: [0, 0]}
                                        - {edge: left top, to: [15, 0]}
                                        - {edge: slit left, to: [15, 30]}
                                        - {edge: slit end, to: [16, 30]}
                                        - {edge: slit right, to: [16, 0]}
                                        - {edge: right top, to: [32, 0]}
                                        - {edge: right, to: [32, 44]}
                                        - {edge: bottom, to: [0, 44]}
                                        - {edge: left, to: start}
                                """);
        assertEquals(Set.of("cutting-line-crosses", "lay-piece-crosses-itself"), codes(crossed));
        assertEquals(
                Set.of("all-pieces", "cutting-plan-sheet", "piece-slit", "yardage-summary"),
                stopped(crossed));
    }

    @Test
    void aHemThatLeavesNothingToSewItToStopsItsPiece() {
        Workings deep =
                workings(
                        """
                        cloth: {sheet: {size: [260, 300], prewash: done}}
                        pattern:
                          rights: mine
                          seam allowance: {of: 1, included: false}
                          pieces:
                            flap:
                              cut: 1
                              outline:
                                - {start: [0, 0]}
                                - {edge: top, to: [20, 0]}
                                - {edge: right, to: [20, 60]}
                                - {edge: hem, to: [0, 60], through: [[17, 67], [10, 70], [3, 67]]}
                                - {edge: left, to: start}
                            flap facing: {cut: 1, rectangle: [45, 32]}
                        hems:
                          flap: {on: [flap.hem], depth: 14, turned: once}
                          flap facing: {on: [flap facing.bottom], depth: 4, turned: once}
                        """);
        assertTrue(codes(deep).contains("hem-no-room"), codes(deep).toString());
        assertEquals(Set.of("all-pieces", "cutting-plan-sheet", "piece-flap"), stopped(deep));
    }

    @Test
    void aClothWithoutASoundPlaceStopsTheClothAndTheLayAndNoOtherCloth() {
        Workings worn =
                workings(
                        """
                        cloth:
                          sheet: {size: [260, 300], prewash: done}
                          sheeting: {role: lining, size: [60, 60], prewash: done,
                            flaws: [{what: worn, at: [30, 30], size: [60, 60]}]}
                        """
                                + PIECES
                                + "    lining: {cut: {lining: 1}, rectangle: [30, 40]}\n");
        assertEquals(Set.of("cloth-none-sound", "lay-no-sound-cloth"), codes(worn));
        assertEquals(Set.of("cloth", "lay"), sections(worn));
        assertEquals(Set.of(), stopped(worn), "nothing is laid on it, and the sheet is sound");
    }

    @Test
    void aLayWithoutRoomStopsThePlansOfItsClothsAlone() {
        Workings tight =
                workings(
                        """
                        cloth:
                          sheet: {size: [60, 70], prewash: done}
                          sheeting: {role: lining, size: [90, 90], prewash: done}
                        """
                                + PIECES
                                + "    lining: {cut: {lining: 1}, rectangle: [30, 40]}\n");
        assertEquals(Set.of("lay-no-room"), codes(tight));
        assertEquals(Set.of("cutting-plan-sheet"), stopped(tight));
        assertEquals(Set.of("lay"), sections(tight));
    }

    /** Whoever presses Ctrl-C at once has a plan on which pieces are missing. */
    @Test
    void aSearchThatWasStoppedTooEarlyStopsItsPlan() {
        LayDesk stopping = new LayDesk(LayDesk.inMemory().store(), 1, (share, bestMm) -> false);
        String tight = "cloth: {sheet: {size: [98, 108], prewash: done}}\n";
        Workings early = workings(tight + PIECES, stopping);
        assertEquals(Set.of("lay-search-stopped-early"), codes(early));
        assertEquals(Set.of("cutting-plan-sheet"), stopped(early));
    }
}
