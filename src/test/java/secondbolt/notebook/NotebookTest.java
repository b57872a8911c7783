package secondbolt.notebook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.w3c.dom.Document;
import secondbolt.draw.paper.Paper;
import secondbolt.draw.paper.PrintCorrection;
import secondbolt.file.json.JsonReader;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.notebook.paper.Desk;
import secondbolt.notebook.paper.PaperChoice;
import secondbolt.notebook.site.SiteFile;
import secondbolt.project.Heading;
import secondbolt.project.Workings;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Finding.Level;
import secondbolt.worksheet.Subject;

/** The site of some projects holds together. */
// It sets the locale of all that runs.
@Isolated
class NotebookTest {
    private static final Workings PLAIN =
            SampleSite.project("porch shirt", "Porch shirt", 650, List.of());

    private static final Workings STOPPED =
            SampleSite.project(
                    "stopped",
                    "Stopped shirt",
                    650,
                    SampleSite.findings(Level.NOTE, Level.WARNING, Level.STOP, Level.CAUTION));

    @Test
    void makesAllFilesWithLinkedOnesFirst() {
        List<String> paths = SampleSite.site(PLAIN).stream().map(SiteFile::path).toList();
        assertEquals(
                List.of(
                        "look/SourceSans3-LICENSE.md",
                        "look/SourceSans3-Regular.woff2",
                        "look/SourceSans3-Semibold.woff2",
                        "look/style.css",
                        "porch shirt/front-band.pdf",
                        "porch shirt/workings.json",
                        "porch shirt/index.html",
                        "project-file.schema.json",
                        "project-file.html",
                        "index.html",
                        "contents.json"),
                paths);
    }

    @Test
    void makesWellFormedPagesWhoseLinksLeadSomewhere() {
        assertEquals(List.of(), new PageCheck(SampleSite.site(PLAIN, STOPPED)).faults());
    }

    @Test
    void makesTheSameBytesInAnotherCountry() {
        List<SiteFile> here = SampleSite.site(PLAIN, STOPPED);
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            List<SiteFile> there = SampleSite.site(PLAIN, STOPPED);
            for (int i = 0; i < here.size(); i++) {
                assertEquals(here.get(i).path(), there.get(i).path());
                assertArrayEquals(
                        here.get(i).content(), there.get(i).content(), here.get(i).path());
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void doesNoHarmWithHtmlInATitle() {
        String bad = "<script>alert('&\"x')</script>]]>{{\u2028";
        Workings project = SampleSite.project("bad", bad, 650, List.of());
        Workings harmful =
                new Workings(
                        "bad",
                        new Heading(
                                bad, Optional.of(bad + " <b>x</b>"), Tape.INCH, Optional.empty()),
                        new SampleWorksheet(bad, 650, List.of()).outcomes());
        for (Workings each : List.of(project, harmful)) {
            List<SiteFile> site = SampleSite.site(each);
            PageCheck check = new PageCheck(site);
            for (String path : List.of("index.html", "bad/index.html", "project-file.html")) {
                Document page = check.page(path);
                assertEquals(0, page.getElementsByTagName("script").getLength(), path);
                assertEquals(0, page.getElementsByTagName("b").getLength(), path);
            }
            assertEquals(
                    bad,
                    check.page("bad/index.html")
                            .getElementsByTagName("h1")
                            .item(0)
                            .getTextContent());
            assertEquals(bad, json(site, "bad/workings.json").get("title"));
        }
    }

    @Test
    void saysDoNotCutFirstAndThenTheGravest() {
        PageCheck check = new PageCheck(SampleSite.site(STOPPED));
        List<String> classes = PageCheck.values(check.page("stopped/index.html"), "class");
        assertEquals(
                List.of("finding stop", "finding warning", "finding caution", "finding note"),
                classes.stream().filter(c -> c.startsWith("finding ")).toList());
        String page = check.page("stopped/index.html").getDocumentElement().getTextContent();
        int verdict = page.indexOf("Do not cut");
        int reason = page.indexOf("a matter of STOP");
        assertTrue(verdict >= 0 && reason > verdict && reason < page.indexOf("Sheets to print"));
    }

    @Test
    void printsWhatSheTypesInQuotationMarks() {
        Finding stop =
                new Finding(
                        "last-too-low",
                        new Subject.Closure("front band"),
                        Level.STOP,
                        "Raise `last` first.",
                        "");
        Workings project = SampleSite.project("shirt", "Shirt", 650, List.of(stop));
        String pages = sheet(project).pages().toString();
        assertTrue(pages.contains("“last”"), pages);
        assertFalse(pages.contains("`"), pages);
    }

    /** Two findings in a row that ask for the same: it is said of the first. */
    @Test
    void saysOnceWhatSeveralFindingsInARowAskFor() {
        Workings project =
                SampleSite.project(
                        "shirt",
                        "Shirt",
                        650,
                        SampleSite.findings(Level.WARNING, Level.CAUTION, Level.NOTE));
        String page =
                new PageCheck(SampleSite.site(project))
                        .page("shirt/index.html")
                        .getDocumentElement()
                        .getTextContent();
        assertEquals(page.indexOf("Use eight buttons"), page.lastIndexOf("Use eight buttons"));
        assertTrue(page.indexOf("Use eight buttons") < page.indexOf("As above."), page);
        assertEquals(page.indexOf("As above."), page.lastIndexOf("As above."), page);
    }

    @Test
    void tellsWhichLettersTheSheetsCannotSet() {
        Workings project = SampleSite.project("shirt", "कमीज shirt", 650, List.of());
        assertEquals(List.of("क", "म", "ी", "ज"), sheet(project).missingLetters());
        PageCheck check = new PageCheck(SampleSite.site(project));
        String page = check.page("shirt/index.html").getDocumentElement().getTextContent();
        assertTrue(page.contains("squares stand in their place: क म ी ज"), page);
        assertEquals(List.of(), sheet(PLAIN).missingLetters());
    }

    @Test
    void printsDoNotCutOnTheSheetsThatAStopTouches() {
        assertFalse(sheet(PLAIN).isStopped());
        assertTrue(sheet(STOPPED).isStopped());
    }

    private static PrintedSheet sheet(Workings project) {
        return PrintedSheet.of(
                PrintedSheet.Asked.of(
                        project.heading(),
                        project.stops(),
                        project.worksheets().get(0).sheets().get(0),
                        PaperChoice.asked(Paper.A4, Desk.UNKNOWN)));
    }

    @Test
    void writesTheFiguresForOtherPrograms() {
        Map<String, Object> workings = json(SampleSite.site(STOPPED), "stopped/workings.json");
        assertEquals(
                List.of(
                        "secondbolt",
                        "title",
                        "summary",
                        "units",
                        "sheets",
                        "findings",
                        "assumed",
                        "open",
                        "sample"),
                List.copyOf(workings.keySet()));
        Map<?, ?> finding = (Map<?, ?>) ((List<?>) workings.get("findings")).get(2);
        assertEquals("stop", finding.get("level"));
        assertEquals("sample", finding.get("sheet"));
        Map<?, ?> sheet = (Map<?, ?>) ((List<?>) workings.get("sheets")).get(0);
        assertEquals("front-band.pdf", sheet.get("file"));
        assertEquals(sheet(STOPPED).code().text(), sheet.get("code"));
    }

    @Test
    void takesTheDesksPaperBeforeTheProjectsBeforeTheUsual() {
        Heading open = new Heading("A", Optional.empty(), Tape.INCH, Optional.empty());
        Heading own = new Heading("A", Optional.empty(), Tape.INCH, Optional.of(Paper.A3));
        Desk legal = new Desk(Optional.of(Paper.LEGAL), PrintCorrection.NONE);
        assertEquals(Paper.LEGAL, PaperChoice.of(legal, own).paper());
        assertEquals(Paper.A3, PaperChoice.of(Desk.UNKNOWN, own).paper());
        assertEquals(Paper.LETTER, PaperChoice.of(Desk.UNKNOWN, open).paper());
        assertEquals("letter", PaperChoice.of(Desk.UNKNOWN, open).assumed().get().value());
        assertTrue(PaperChoice.of(Desk.UNKNOWN, own).assumed().isEmpty());
    }

    /** Others print it too, on printers of their own. */
    @Test
    void isDrawnForAPrinterThatPrintsTrueWhateverTheDeskSays() {
        PrintCorrection correction =
                new PrintCorrection(Length.ofMillimetres(99), Length.ofMillimetres(100));
        List<SiteFile> corrected =
                new Notebook("0.1.0", SampleSite.root(), Map.of())
                        .make(List.of(PLAIN), List.of(), new Desk(Optional.empty(), correction));
        List<SiteFile> plain = SampleSite.site(PLAIN);
        for (int i = 0; i < plain.size(); i++) {
            assertArrayEquals(
                    plain.get(i).content(), corrected.get(i).content(), plain.get(i)::path);
        }
    }

    @Test
    void listsKeysThatAreNotWorkedOutYet() {
        String reference = SampleSite.text(SampleSite.site(), "project-file.html");
        assertTrue(reference.contains("id=\"key.cloth.known-by\""));
        assertTrue(reference.indexOf("not worked out yet") < reference.indexOf("id=\"key.lay\""));
        assertTrue(reference.contains("<code>burn test</code>"));
    }

    @Test
    void refusesFoldersThatSomeMachinesTakeForOne() {
        Workings other = SampleSite.project("Porch Shirt", "Other", 650, List.of());
        assertThrows(IllegalArgumentException.class, () -> SampleSite.site(PLAIN, other));
        Workings look = SampleSite.project("Look", "Other", 650, List.of());
        assertThrows(IllegalArgumentException.class, () -> SampleSite.site(look));
        Workings up = SampleSite.project("..", "Other", 650, List.of());
        assertThrows(IllegalArgumentException.class, () -> SampleSite.site(up));
    }

    private static Map<String, Object> json(List<SiteFile> site, String path) {
        return JsonReader.readObject(SampleSite.text(site, path)).orElseThrow();
    }
}
