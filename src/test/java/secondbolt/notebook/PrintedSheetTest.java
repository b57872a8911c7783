package secondbolt.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import secondbolt.block.Block;
import secondbolt.block.Table;
import secondbolt.draw.Drawing;
import secondbolt.draw.Pen;
import secondbolt.draw.SheetCode;
import secondbolt.draw.Sketch;
import secondbolt.draw.paper.Paper;
import secondbolt.draw.paper.PrintCorrection;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;
import secondbolt.notebook.paper.Desk;
import secondbolt.notebook.paper.PaperChoice;
import secondbolt.project.Heading;
import secondbolt.shape.Box;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Sheet;
import secondbolt.worksheet.Subject;

/** A sheet's code covers all that is printed on it: paper that says anything else is stale. */
class PrintedSheetTest {
    private static final Subject FRONT = new Subject.Closure("front");
    private static final List<Block> BLOCKS =
            List.of(
                    new Block.Steps(List.of("Cut along the line.", "Press.")),
                    new Block.Warnings(List.of("The hem is deep.")),
                    rows("1", "3 cm"));
    private static final PaperChoice A4 = PaperChoice.asked(Paper.A4, Desk.UNKNOWN);

    private static Block rows(String... cells) {
        return new Block.Rows(Table.of(List.of("Button", "At"), List.of(List.of(cells))));
    }

    private static Drawing drawing() {
        Box box = new Box(0, 0, 50, 50);
        return new Sketch().box(box, Pen.PLAIN).drawing("Band", box);
    }

    private static Sheet sheet(String title, List<Block> blocks) {
        return new Sheet("band", title, Set.of(FRONT), drawing(), blocks, Sheet.Size.HOME);
    }

    private static Heading heading(String title, Tape tape) {
        return new Heading(title, Optional.empty(), tape, Optional.empty());
    }

    private static SheetCode code(
            Heading heading, Sheet sheet, PaperChoice paper, Finding... stops) {
        return PrintedSheet.of(asked(heading, sheet, paper, stops)).code();
    }

    private static PrintedSheet.Asked asked(
            Heading heading, Sheet sheet, PaperChoice paper, Finding... stops) {
        return PrintedSheet.Asked.of(heading, List.of(stops), sheet, paper);
    }

    private static SheetCode code(Block... blocks) {
        return code(heading("Shirt", Tape.CENTIMETRE), sheet("Band", List.of(blocks)), A4);
    }

    private static Finding stop(Subject about, String text) {
        return new Finding("too-low", about, Finding.Level.STOP, text, "");
    }

    private static PaperChoice correctedTo(String measured) {
        Length off = Length.parse(measured, Tape.CENTIMETRE).orThrow();
        return PaperChoice.asked(
                Paper.A4,
                new Desk(Optional.empty(), new PrintCorrection(off, Length.ofMillimetres(100))));
    }

    @Test
    void isTheSameWhereTheSameIsPrinted() {
        SheetCode code = code(BLOCKS.toArray(Block[]::new));
        assertTrue(SheetCode.isCode(code.text()));
        assertEquals(code, code(BLOCKS.toArray(Block[]::new)));
        assertEquals(
                code,
                code(
                        heading("Shirt", Tape.CENTIMETRE),
                        sheet("Band", BLOCKS),
                        A4,
                        stop(new Subject.Closure("back"), "A stop elsewhere.")));
    }

    /** Her paper, corrected for her printer, is told current by the code on the page. */
    @Test
    void isTheSameForEachPrinterAndEachPageSaysThatItIsCorrected() {
        Heading shirt = heading("Shirt", Tape.CENTIMETRE);
        Sheet band = sheet("Band", BLOCKS);
        assertEquals(code(shirt, band, A4), code(shirt, band, correctedTo("99.4 mm")));
        assertFalse(areAllCorrected(PrintedSheet.of(asked(shirt, band, A4))));
        assertTrue(areAllCorrected(PrintedSheet.of(asked(shirt, band, correctedTo("99.4 mm")))));
    }

    private static boolean areAllCorrected(PrintedSheet sheet) {
        return sheet.pages().stream()
                .allMatch(
                        page ->
                                page.drawing()
                                        .toString()
                                        .contains("code " + sheet.code() + " · corrected"));
    }

    @Test
    void isAnotherForEachThingThatIsPrintedOtherwise() {
        Heading shirt = heading("Shirt", Tape.CENTIMETRE);
        Sheet band = sheet("Band", BLOCKS);
        Block steps = BLOCKS.get(0);
        Block warnings = BLOCKS.get(1);
        List<SheetCode> codes = new ArrayList<>();
        codes.add(code(shirt, band, A4));
        codes.add(code(shirt, band, A4, stop(FRONT, "The last hole is low.")));
        codes.add(code(shirt, band, A4, stop(FRONT, "The last hole is lower.")));
        codes.add(code(shirt, band, PaperChoice.asked(Paper.LETTER, Desk.UNKNOWN)));
        codes.add(code(heading("Shirt", Tape.INCH), band, A4));
        codes.add(code(heading("Blouse", Tape.CENTIMETRE), band, A4));
        codes.add(code(shirt, sheet("Bands", BLOCKS), A4));
        codes.add(code(steps, warnings, rows("1", "3.5 cm")));
        codes.add(code(steps, warnings));
        codes.add(code(steps, new Block.Warnings(List.of()), BLOCKS.get(2)));
        codes.add(code(new Block.Steps(List.of("Press.")), warnings, BLOCKS.get(2)));
        assertEquals(codes.size(), new HashSet<>(codes).size(), codes::toString);
    }

    /** What moves from one part of a sheet to the next is printed otherwise. */
    @Test
    void tellsAStepFromAWarning() {
        assertNotEquals(
                code(new Block.Steps(List.of("Press.", "Cut."))),
                code(new Block.Steps(List.of("Press.")), new Block.Warnings(List.of("Cut."))));
        assertNotEquals(code(rows("1", "23")), code(rows("12", "3")));
    }
}
