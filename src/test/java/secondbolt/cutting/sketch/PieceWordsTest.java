package secondbolt.cutting.sketch;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.cutting.Written;
import secondbolt.cutting.line.CutPiece;
import secondbolt.draw.Drawing;
import secondbolt.draw.Mark;

/** Nothing that must be read on a piece is left out, however small the piece. */
class PieceWordsTest {
    @ParameterizedTest(name = "{0} by {1}")
    @CsvSource({"60, 80", "12, 8", "3, 40", "40, 3", "2, 2", "1, 1"})
    void saysAllOnAPieceOfAnySize(double across, double along) {
        CutPiece piece = piece(across, along);
        for (SketchStyle style : List.of(SketchStyle.FULL_SIZE, SketchStyle.PICTURE)) {
            Drawing drawing = PieceSketch.of(piece, List.of("Cut 4 of main"), style);
            List<String> texts = new ArrayList<>();
            drawing.marks().stream()
                    .filter(Mark.Label.class::isInstance)
                    .map(Mark.Label.class::cast)
                    .forEach(label -> texts.add(label.text()));
            for (String wanted :
                    List.of(
                            "tab",
                            "Cut 4 of main",
                            "top",
                            "right",
                            "bottom",
                            "left",
                            "grain",
                            "snap")) {
                assertTrue(texts.contains(wanted), wanted + " is missing in " + texts);
            }
            assertTrue(texts.stream().anyMatch(text -> text.endsWith("middle")), texts::toString);
        }
    }

    /** The g of a name reaches below its line, and what is written there keeps clear of it. */
    @Test
    void aNameDoesNotReachIntoWhatIsWrittenUnderIt() {
        List<Mark.Label> labels =
                PieceSketch.of(piece(60, 80), List.of("Cut 4 of main"), SketchStyle.FULL_SIZE)
                        .marks()
                        .stream()
                        .filter(Mark.Label.class::isInstance)
                        .map(Mark.Label.class::cast)
                        .toList();
        Mark.Label name = find(labels, "tab");
        Mark.Label under = find(labels, "Cut 4 of main");
        double apartMm = name.at().distanceMm(under.at());
        double descenderMm = 0.22 * name.lettering().sizeMm();
        double ascenderMm = 0.75 * under.lettering().sizeMm();
        assertTrue(apartMm > descenderMm + ascenderMm, () -> "only " + apartMm + " mm apart");
    }

    private static Mark.Label find(List<Mark.Label> labels, String text) {
        return labels.stream().filter(label -> label.text().equals(text)).findFirst().orElseThrow();
    }

    private static CutPiece piece(double across, double along) {
        return Written.result(
                        "cm",
                        "pattern:",
                        "  rights: mine",
                        "  seam allowance: {of: 1, included: false}",
                        "  pieces:",
                        "    tab: {cut: 4, rectangle: [" + across + ", " + along + "],",
                        "      lines: {middle: " + along / 2 + "},",
                        "      marks: [{what: snap, at: [" + across / 4 + ", " + along / 4 + "]}]}")
                .pieces()
                .get(0);
    }
}
