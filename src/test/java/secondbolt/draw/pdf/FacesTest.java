package secondbolt.draw.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import secondbolt.draw.Lettering;

/** Every letter is written by a font that has it, and is no wider than the layout thinks. */
class FacesTest {
    @Test
    void hasTheScriptsMakersWriteIn() {
        String text =
                "½⅛⅝¾ ³⁄₁₆ Łódź ẞ Ελληνικά πατιλέτα Застёжка קו אמצע שָׁלוֹם خط الوسط لا پچژگ 前中心線 왼쪽 きぬ ·×→°…";
        assertEquals(List.of(), Faces.missing(text));
    }

    @Test
    void tellsWhichLettersNoFontHas() {
        assertEquals(List.of("\uDB80\uDC01"), Faces.missing("a\uDB80\uDC01b\uDB80\uDC01"));
    }

    @Test
    void drawsASquareForALetterNoFontHas() {
        List<Faces.Run> runs = Faces.runs("a\uDB80\uDC01", Lettering.Face.REGULAR);
        assertEquals("□", runs.get(1).letters());
    }

    /** Against the advance widths in the fonts themselves. */
    @Test
    void laysOutNoTextNarrowerThanItIsDrawn() throws IOException {
        List<String> texts =
                List.of(
                        "Press the band flat and lay it face up on the ironing board.",
                        "WIDE MAWMAW 1234567890 (½ in)",
                        "³⁄₁₆ ⅝ 10.75 cm · row 2 of 4",
                        "Ελληνικά πατιλέτα",
                        "Застёжка переда",
                        "קו אמצע (3 ס״מ)",
                        "خط الوسط",
                        "前中心線 왼쪽 きぬ",
                        "पुराने पर्दे से कमीज",
                        "เสื้อจากผ้าม่าน");
        try (PDDocument document = new PDDocument()) {
            PdfFonts fonts = new PdfFonts(document);
            for (String text : texts) {
                for (Lettering.Face face : Lettering.Face.values()) {
                    Lettering lettering = new Lettering(1, face, 0);
                    double drawn = fonts.set(text, face).widthInSizes();
                    assertTrue(drawn <= lettering.widthMm(text), text + " " + drawn);
                }
            }
        }
    }
}
