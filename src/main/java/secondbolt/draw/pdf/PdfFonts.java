package secondbolt.draw.pdf;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The fonts of one document; each is embedded once it is used, only with the letters used. */
final class PdfFonts {
    private static final double UNITS_PER_EM = 1000;

    private final PDDocument document;
    private final Map<FontFile, PDType0Font> fonts = new LinkedHashMap<>();

    PdfFonts(PDDocument document) {
        this.document = document;
    }

    PDType0Font font(FontFile file) throws IOException {
        PDType0Font font = fonts.get(file);
        if (font == null) {
            font = PDType0Font.load(document, file.font(), true);
            fonts.put(file, font);
        }
        return font;
    }

    /** How wide the runs come out, as a multiple of the lettering's size. */
    double widthInSizes(List<Faces.Run> runs) throws IOException {
        double units = 0;
        for (Faces.Run run : runs) {
            units += font(run.font()).getStringWidth(run.letters());
        }
        return units / UNITS_PER_EM;
    }
}
