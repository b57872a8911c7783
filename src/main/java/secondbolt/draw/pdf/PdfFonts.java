package secondbolt.draw.pdf;

import java.io.IOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import secondbolt.draw.Lettering;

/** The fonts of one document; each is embedded once it is used, only with the letters used. */
final class PdfFonts {
    private static final double UNITS_PER_EM = 1000;

    private final PDDocument document;
    private final Map<FontFile, PDType0Font> fonts = new LinkedHashMap<>();

    /** A piece on several tiles has the same labels on each. */
    private final Map<Text, Line> texts = new HashMap<>();

    private record Text(String letters, Lettering.Face face) {}

    /**
     * A text as it is set.
     *
     * @param runs in the order they are seen
     * @param widthInSizes how wide it comes out, as a multiple of the lettering's size
     */
    record Line(List<Faces.Run> runs, double widthInSizes) {}

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

    /** Sets a text in a face. */
    Line set(String letters, Lettering.Face face) throws IOException {
        Text text = new Text(letters, face);
        Line set = texts.get(text);
        if (set == null) {
            List<Faces.Run> runs = Faces.runs(letters, face);
            set = new Line(runs, widthInSizes(runs));
            texts.put(text, set);
        }
        return set;
    }

    private double widthInSizes(List<Faces.Run> runs) throws IOException {
        double units = 0;
        for (Faces.Run run : runs) {
            units += font(run.font()).getStringWidth(run.letters());
        }
        return units / UNITS_PER_EM;
    }
}
