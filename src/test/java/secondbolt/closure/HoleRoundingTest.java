package secondbolt.closure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import secondbolt.closure.fastening.Button;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.fastening.Overlap;
import secondbolt.closure.row.ClosureResult;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Sheet;

/** A hole has one length, rounded in one way, wherever it is printed. */
class HoleRoundingTest {
    private static ClosureResult girth(String girth, Tape tape) {
        Button button =
                new Button(
                        Button.Shape.DOMED,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Length.parse(girth, tape).orThrow()),
                        Button.Attached.SHANK);
        return Written.mm(500)
                .of(
                        new Fastening(
                                Fastening.Kind.BUTTONS,
                                Optional.of(button),
                                Optional.empty(),
                                Optional.empty(),
                                Fastening.Holes.UPRIGHT,
                                Map.of()))
                .count(4)
                .from(20, 80)
                .result(tape);
    }

    private static Sheet card(ClosureResult result) {
        return new ClosureSheets(List.of(result), List.of()).sheets().get(1);
    }

    private static String trial(ClosureResult result) {
        return ClosureFindings.of(result, Optional.empty()).stream()
                .filter(f -> f.code().equals("buttonhole-trial"))
                .map(Finding::text)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Hand-worked: half of 60.44 mm is 30.22 mm, 19.04 sixteenths of an inch: 1 3/16 in, 30 mm; the
     * longer one, a sixteenth more, 1 1/4 in.
     */
    @Test
    void printsTheHoleOnPageCardAndInWordsAlike() {
        ClosureResult result = girth("60.44 mm", Tape.INCH);
        String own = Tape.INCH.printSmall(result.hole());
        assertEquals("1\u2009³⁄₁₆ in", own);
        assertEquals("30 mm", Tape.CENTIMETRE.printSmall(result.hole()));
        String page = new ClosurePage(result).blocks().toString();
        assertTrue(page.contains("Buttonhole, between its bars, value=Both[own=" + own), page);
        assertTrue(trial(result).contains("The hole of " + own + " (30 mm)"), trial(result));
        assertTrue(card(result).drawing().toString().contains(own + " (30 mm)"));
        assertTrue(card(result).blocks().toString().contains(own));
    }

    @Test
    void printsAnyHoleAlike() {
        SplittableRandom random = new SplittableRandom(4);
        for (int i = 0; i < 40; i++) {
            Tape tape = i % 2 == 0 ? Tape.INCH : Tape.CENTIMETRE;
            ClosureResult result = girth(random.nextInt(3000, 9000) / 100.0 + " mm", tape);
            String both = tape.printSmallBoth(result.hole());
            String page = new ClosurePage(result).blocks().toString();
            assertTrue(trial(result).contains("The hole of " + both), trial(result));
            assertTrue(card(result).drawing().toString().contains(both), both);
            assertTrue(page.contains("Both[own=" + tape.printSmall(result.hole())), page);
        }
    }

    /**
     * Hand-worked: half of 18.9 mm and 6.35 mm make 15.8 mm, up to the mark 16; 15.7 is seen as
     * 15.5, so half a millimetre is lacking, never "0 mm".
     */
    @Test
    void tellsAnExtensionThatLacksLessThanAMark() {
        Length extension = Length.parse("15.7 mm", Tape.CENTIMETRE).orThrow();
        Fastening buttons =
                Written.buttons(
                        Length.parse("18.9 mm", Tape.CENTIMETRE).orThrow(),
                        Length.ofMillimetres(3),
                        Fastening.Holes.UPRIGHT);
        ClosureResult result =
                Written.mm(500)
                        .of(buttons)
                        .overlap(Written.overlap(extension, Overlap.Laps.RIGHT_OVER_LEFT))
                        .count(4)
                        .from(20, 80)
                        .result();
        Finding narrow = new ExtensionFindings(result).findings().get(0);
        assertEquals("extension-narrow", narrow.code());
        assertTrue(narrow.text().contains("of 15.5 mm is narrow"), narrow.text());
        assertTrue(narrow.text().contains("make 16 mm"), narrow.text());
        assertTrue(narrow.remedy().startsWith("Widen the extension by 0.5 mm"), narrow.remedy());
    }
}
