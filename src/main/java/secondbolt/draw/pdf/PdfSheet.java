package secondbolt.draw.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.DUPLEX;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.PRINT_SCALING;
import secondbolt.draw.CanonicalText;
import secondbolt.draw.Decimals;
import secondbolt.draw.paper.Page;

/** Renders pages as a PDF document that asks to be printed at its true size. */
public final class PdfSheet {
    private PdfSheet() {}

    /**
     * The document: the same bytes for the same content, with every font embedded and no date.
     *
     * @param title shown by the viewer in place of the file's name
     * @param language a BCP 47 tag such as {@code en}
     * @param pages at least one
     * @throws IllegalArgumentException if there is no page
     */
    public static byte[] render(String title, String language, List<Page> pages) {
        if (pages.isEmpty()) {
            throw new IllegalArgumentException("pages must not be empty");
        }
        if (!FontFile.isQuiet()) {
            throw new IllegalStateException("the PDF library's logging could not be turned off");
        }
        try (PDDocument document = new PDDocument()) {
            document.getDocumentInformation().setTitle(title);
            document.getDocumentCatalog().setLanguage(language);
            document.getDocumentCatalog().setViewerPreferences(preferences());
            document.setDocumentId(id(title, language, pages));
            PdfFonts fonts = new PdfFonts(document);
            for (Page page : pages) {
                write(document, fonts, page);
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(title, e);
        }
    }

    private static void write(PDDocument document, PdfFonts fonts, Page page) throws IOException {
        float width = (float) (page.widthMm() * PageWriter.POINTS_PER_MM);
        float height = (float) (page.heightMm() * PageWriter.POINTS_PER_MM);
        PDPage sheet = new PDPage(new PDRectangle(width, height));
        document.addPage(sheet);
        try (PDPageContentStream out = new PDPageContentStream(document, sheet)) {
            new PageWriter(out, fonts, page).write(page.drawing());
        }
    }

    /**
     * Source: ISO 32000-1, table 150. They pre-select the print dialog; the maker may change it.
     */
    private static PDViewerPreferences preferences() {
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setPrintScaling(PRINT_SCALING.None);
        preferences.setDisplayDocTitle(true);
        preferences.setDuplex(DUPLEX.Simplex);
        COSName trayBySize = COSName.getPDFName("PickTrayByPDFSize");
        preferences.getCOSObject().setBoolean(trayBySize, true);
        return preferences;
    }

    /** From the content, since the library would otherwise take the time of day. */
    private static long id(String title, String language, List<Page> pages) {
        MessageDigest digest = sha256();
        digest.update((title + "\n" + language + "\n").getBytes(StandardCharsets.UTF_8));
        List<String> texts = CanonicalText.of(pages.stream().map(Page::drawing).toList());
        for (int i = 0; i < pages.size(); i++) {
            Page page = pages.get(i);
            String size =
                    Decimals.text(page.widthMm())
                            + " "
                            + Decimals.text(page.heightMm())
                            + " "
                            + page.scaleAcross()
                            + " "
                            + page.scaleAlong()
                            + "\n";
            digest.update(size.getBytes(StandardCharsets.UTF_8));
            digest.update(texts.get(i).getBytes(StandardCharsets.UTF_8));
        }
        return ByteBuffer.wrap(digest.digest()).getLong();
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
