package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What each command does, prints and exits with. */
class CommandsTest {
    @TempDir Path folder;

    private Desktop apron() {
        return new Desktop(folder).with("projects/apron/project.yaml", Desktop.APRON);
    }

    private static double widthMm(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
            return document.getPage(0).getMediaBox().getWidth() * 25.4 / 72;
        }
    }

    /** US Letter is 215.9 mm wide, A4 210 mm. */
    @Test
    void printsOneSheetOnThePaperThatIsAsked() throws IOException {
        Desktop desktop = apron();
        assertEquals(
                Secondbolt.DONE,
                desktop.run("sheet", "projects/apron", "back", "--paper", "letter"),
                desktop.err());
        assertTrue(desktop.out().startsWith("back.pdf: "), desktop.out());
        assertTrue(desktop.out().contains(" pages, code "), desktop.out());
        assertEquals(215.9, widthMm(folder.resolve("back.pdf")), 0.01);
        assertFalse(Files.exists(folder.resolve("site")));
    }

    @Test
    void printsOneSheetOnTheDesksPaperWhereItIsAsked() throws IOException {
        Desktop desktop = apron().with("local.yaml", "paper: a4\n");
        assertEquals(
                Secondbolt.DONE,
                desktop.run(
                        "sheet", "projects/apron/project.yaml", "back", "--quiet", "--out", "b"));
        assertEquals("", desktop.out());
        assertEquals(210, widthMm(folder.resolve("b")), 0.01);
    }

    /**
     * The same code as on the sheet of the notebook, so that no two papers tell different things.
     */
    @Test
    void tellsTheCodeThatTheNotebookPrints() {
        Desktop desktop = apron();
        desktop.run("sheet", "projects/apron", "back");
        String code = desktop.out().replaceAll("(?s)^.* code (\\S+)\\s*$", "$1");
        desktop.run("notebook", "--quiet");
        assertTrue(desktop.read("site/apron/workings.json").contains('"' + code + '"'), code);
    }

    @Test
    void refusesASheetOfAFileWithMistakes() {
        Desktop desktop =
                apron().with("projects/apron/project.yaml", Desktop.APRON.replace("cm", "ell"));
        assertEquals(Secondbolt.REFUSED, desktop.run("sheet", "projects/apron", "back"));
        assertTrue(desktop.err().contains("mistake: found `ell`"), desktop.err());
        assertFalse(Files.exists(folder.resolve("back.pdf")));
    }

    @Test
    void asksWhichProjectWhereThereAreSeveral() {
        Desktop desktop = apron().with("projects/bib/project.yaml", Desktop.APRON);
        assertEquals(Secondbolt.USAGE, desktop.run("sheet", "projects", "back"));
        assertTrue(desktop.err().contains("holds several projects; name one"), desktop.err());
    }

    @Test
    void saysThatAProjectHasNoSheets() {
        Desktop desktop = new Desktop(folder).with("p/project.yaml", "title: Idea\nunits: cm\n");
        assertEquals(Secondbolt.USAGE, desktop.run("sheet", "p", "back"));
        assertTrue(desktop.err().contains("the project has none"), desktop.err());
    }

    @Test
    void tellsWhereASheetCannotBeWritten() {
        Desktop desktop = apron();
        assertEquals(
                Secondbolt.REFUSED,
                desktop.run("sheet", "projects/apron", "back", "--out", "no/such/back.pdf"));
        assertTrue(desktop.err().contains("no/such/back.pdf cannot be written"), desktop.err());
    }

    @Test
    void leavesNoPartOfASheetBehindWhereAFolderIsInItsWay() {
        Desktop desktop = apron().with("back.pdf/note", "in a folder");
        assertEquals(Secondbolt.REFUSED, desktop.run("sheet", "projects/apron", "back"));
        assertTrue(desktop.err().contains("back.pdf cannot be written"), desktop.err());
        assertFalse(Files.exists(folder.resolve("back.pdf.part~")));
    }

    @Test
    void tellsThatASoundProjectHasNoMistakes() {
        Desktop desktop = apron();
        int code = desktop.run("check", "projects/apron");
        assertEquals(Secondbolt.DONE, code, desktop.err());
        assertTrue(desktop.out().startsWith("apron: no mistakes"), desktop.out());
        desktop.run("check", "projects/apron", "--quiet");
        assertEquals("", desktop.out());
    }

    /** Thirty pieces of half a metre are more than the sheet has. */
    @Test
    void exitsWithOneWhereNothingMayBeCut() {
        Desktop desktop =
                apron().with(
                                "projects/apron/project.yaml",
                                Desktop.APRON.replace(
                                        "closures:",
                                        "pattern: {rights: mine, pieces: {panel: {cut: 30,"
                                                + " rectangle: [50, 50]}}}\nclosures:"));
        assertEquals(Secondbolt.REFUSED, desktop.run("check", "projects/apron"), desktop.out());
        assertTrue(desktop.err().contains("apron: DO NOT CUT: "), desktop.err());
    }

    @Test
    void printsTheKeysOfAllSectionsOrOfOne() {
        Desktop desktop = new Desktop(folder);
        assertEquals(Secondbolt.DONE, desktop.run("keys"));
        assertTrue(desktop.out().startsWith("title (must be written)\n"), desktop.out());
        assertTrue(desktop.out().contains(" (known, not worked out yet)\n"), desktop.out());
        assertEquals(Secondbolt.DONE, desktop.run("keys", "cloth"));
        assertTrue(desktop.out().startsWith("cloth\n"), desktop.out());
        assertTrue(desktop.out().contains("    size"), desktop.out());
        assertEquals(Secondbolt.USAGE, desktop.run("keys", "wool"));
        assertTrue(desktop.err().contains("no section `wool`; there are title"), desktop.err());
        assertTrue(
                desktop.err().contains("; and beside the project file plan.yaml, local.yaml"),
                desktop.err());
    }

    @Test
    void tellsItsVersionAndItsCommands() {
        Desktop desktop = new Desktop(folder);
        assertEquals(Secondbolt.DONE, desktop.run("--version"));
        assertEquals("secondbolt 0.1.0\n", desktop.out());
        assertEquals(Secondbolt.DONE, desktop.run("--help"));
        for (String command : new String[] {"notebook", "sheet", "check", "keys"}) {
            assertTrue(desktop.out().contains("\n  " + command), desktop.out());
        }
    }

    /** Whoever the notebook is passed on to has another printer than she. */
    @Test
    void correctsTheSheetsOfTheCommandAndNotThoseOfTheNotebook() throws IOException {
        Desktop desktop = new Desktop(folder).with("projects/apron/project.yaml", Desktop.APRON);
        assertEquals(Secondbolt.DONE, desktop.run("notebook"));
        byte[] before = Files.readAllBytes(folder.resolve("site/apron/back.pdf"));
        desktop.with("local.yaml", "printer: {square measured: [99.4 mm, 100 mm]}\n");
        assertEquals(Secondbolt.DONE, desktop.run("notebook"));
        assertTrue(desktop.out().contains("drawn for a printer that prints true"), desktop.out());
        assertArrayEquals(before, Files.readAllBytes(folder.resolve("site/apron/back.pdf")));
        desktop.with("printed/read.me", "hers");
        assertEquals(
                Secondbolt.DONE,
                desktop.run("sheet", "projects/apron", "--all", "--out", "printed"));
        try (Stream<Path> printed = Files.list(folder.resolve("printed"));
                Stream<Path> shown = Files.list(folder.resolve("site/apron"))) {
            assertEquals(
                    shown.filter(p -> p.toString().endsWith(".pdf")).count() + 1, printed.count());
        }
        byte[] corrected = Files.readAllBytes(folder.resolve("printed/back.pdf"));
        assertFalse(Arrays.equals(before, corrected));
        String code = desktop.out().lines().filter(l -> l.contains("back.pdf")).findFirst().get();
        assertTrue(
                desktop.read("site/apron/index.html").contains(code.substring(code.length() - 6)),
                "her paper is told current by the code on the page: " + code);
    }

    @Test
    void writesNoSheetWhereOneMayNotBe() {
        Desktop desktop =
                new Desktop(folder)
                        .with("projects/apron/project.yaml", Desktop.APRON)
                        .with("back.pdf", "hers");
        assertEquals(Secondbolt.REFUSED, desktop.run("sheet", "projects/apron", "--all"));
        assertTrue(desktop.err().contains("back.pdf cannot be written"), desktop.err());
        assertFalse(Files.exists(folder.resolve("back-test.pdf")));
        assertEquals(Secondbolt.USAGE, desktop.run("sheet", "projects/apron"));
        assertTrue(desktop.err().contains("name the sheets, or say --all"), desktop.err());
    }
}
