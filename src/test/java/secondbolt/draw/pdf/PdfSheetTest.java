package secondbolt.draw.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import secondbolt.draw.Drawing;
import secondbolt.draw.paper.Page;
import secondbolt.draw.paper.Paper;
import secondbolt.draw.paper.PrintCorrection;
import secondbolt.measure.Tape;
import secondbolt.tools.Tools;

/** The document as a reader of PDF finds it. */
class PdfSheetTest {
    private static final Drawing BAND = SampleSheet.band(110, 650);

    private static byte[] render(Paper paper) {
        List<Page> pages = SampleSheet.pages(BAND, paper, PrintCorrection.NONE, Tape.CENTIMETRE);
        return PdfSheet.render("Front band", "en", pages);
    }

    /** Sheets share their fonts; each must come out as if it were the only one. */
    @Test
    void rendersTheSameBytesSideBySide() {
        List<Paper> papers = List.of(Paper.A4, Paper.LETTER, Paper.A3, Paper.LEGAL);
        List<byte[]> alone = papers.stream().map(PdfSheetTest::render).toList();
        IntStream.range(0, 60)
                .parallel()
                .forEach(
                        i -> {
                            int number = i % papers.size();
                            assertArrayEquals(alone.get(number), render(papers.get(number)));
                        });
    }

    /** US Letter is 612 by 792 points. Source: ISO 32000-1, 14.11.2 with 8.5 and 11 in. */
    @Test
    void givesThePageTheSizeOfThePaper() throws IOException {
        try (PDDocument document = Loader.loadPDF(render(Paper.LETTER))) {
            for (PDPage page : document.getPages()) {
                assertEquals(612, page.getMediaBox().getWidth(), 1e-3);
                assertEquals(792, page.getMediaBox().getHeight(), 1e-3);
            }
        }
    }

    /** ISO 32000-1, table 150. */
    @Test
    void asksToBePrintedAtItsTrueSize() throws IOException {
        try (PDDocument document = Loader.loadPDF(render(Paper.A4))) {
            var preferences = document.getDocumentCatalog().getViewerPreferences();
            assertEquals("None", preferences.getPrintScaling());
            assertEquals("Simplex", preferences.getDuplex());
            assertTrue(preferences.displayDocTitle());
            assertTrue(
                    preferences
                            .getCOSObject()
                            .getBoolean(COSName.getPDFName("PickTrayByPDFSize"), false));
            assertEquals("en", document.getDocumentCatalog().getLanguage());
            assertEquals("Front band", document.getDocumentInformation().getTitle());
            assertNull(document.getDocumentInformation().getCreationDate());
        }
    }

    @Test
    void embedsOnlyTheLettersUsedOfEveryFont() throws IOException {
        try (PDDocument document = Loader.loadPDF(render(Paper.A4))) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                    // ISO 32000-1, 9.6.4: six capitals and a plus mark a subset.
                    assertTrue(font.getName().matches("[A-Z]{6}\\+.*"), font.getName());
                }
            }
        }
    }

    @Test
    void givesTheSameBytesTwice() {
        assertArrayEquals(render(Paper.A4), render(Paper.A4));
    }

    @Test
    void refusesADocumentWithoutPages() {
        assertThrows(IllegalArgumentException.class, () -> PdfSheet.render("x", "en", List.of()));
    }

    @Test
    void isSoundToOtherReaders(@TempDir Path folder) throws IOException {
        Path qpdf = Tools.require("qpdf");
        Files.write(folder.resolve("band.pdf"), render(Paper.A4));
        String told = Tools.run(folder, qpdf.toString(), "--check", "band.pdf");
        assertTrue(told.contains("No syntax or stream encoding errors"), told);
    }
}
