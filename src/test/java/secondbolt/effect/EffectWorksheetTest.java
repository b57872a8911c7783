package secondbolt.effect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import secondbolt.block.Block;
import secondbolt.block.Table;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.project.WrittenProject;
import secondbolt.worksheet.Worksheet;

/** What follows from an alteration, worked by hand on a smock of rectangles. */
class EffectWorksheetTest {
    private static final String SMOCK =
            """
            title: Smock
            units: cm
            pattern:
              rights: mine
              seam allowance: {of: 1, included: false}
              pieces:
                front: {cut: pair, rectangle: [30, 84], lines: {body: 40},
                  marks: [{what: pocket, at: [10, 50]}, {what: bust point, at: [10, 30]}]}
                back: {cut: 1, fold: left, rectangle: [28, 84], lines: {body: 40}}
            closures:
              band: {on: front.left, extension: 2, buttons: 7, first: 2, last: 10,
                button: {across: 15 mm, thick: 3 mm}, holes: upright, laps: right over left}
            hems:
              lower: {on: [front.bottom, back.bottom], depth: 2, turned: once}
            alterations:
              - {lengthen: body, by: 2}
              - {widen: right, by: 2}
              - {lengthen: body, by: 1}
            """;

    private static Worksheet worksheet() {
        return worksheet(SMOCK);
    }

    private static Worksheet worksheet(String text) {
        Mistakes mistakes = new Mistakes();
        return WrittenProject.read(SourceFile.of("test.yaml", text), mistakes)
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()))
                .workings("smock")
                .worksheets()
                .stream()
                .filter(w -> w.name().equals("effects"))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> rows(int alteration) {
        List<Table> tables =
                worksheet().blocks().stream()
                        .filter(Block.Rows.class::isInstance)
                        .map(block -> ((Block.Rows) block).table())
                        .toList();
        return tables.get(alteration).rows().stream()
                .map(row -> row.stream().map(cell -> cell.value().own()).toList())
                .map(cells -> cells.get(0) + ": " + cells.get(1) + ", " + cells.get(2))
                .toList();
    }

    /**
     * Derived: (84 - 2 - 10) / 6 = 12 becomes 74 / 6; two fronts of 32 cm and two halves of the
     * back of 29 cm are cut 87 cm long, 1.0614 m², and become 89 cm long, 1.0858 m².
     */
    @Test
    void listsAllThatLengtheningTheBodyChanges() {
        assertEquals(
                List.of(
                        "band: the placket: 84 cm, 86 cm",
                        "band: from button to button: 12 cm, 12.35 cm",
                        "band: button 7, from the top: 74 cm, 76 cm",
                        "front: pocket, from the piece's top: 50 cm, 52 cm",
                        "front, cut of main: along: 87 cm, 89 cm",
                        "back, cut of main: along: 87 cm, 89 cm",
                        "Cloth in all pieces cut of main: 1.06 m², 1.09 m²"),
                rows(0));
    }

    /** Derived: 2 cm over four cut edges is half a centimetre on each; the hem has all of it. */
    @Test
    void listsAllThatWideningChanges() {
        assertTrue(
                rows(1).contains("lower: its fold, all round: 116 cm, 118 cm"), rows(1)::toString);
        assertTrue(rows(1).contains("front, cut of main: across: 32 cm, 32.5 cm"));
    }

    /**
     * Widened by a millimetre, the hem of 2 · 30 + 2 · 28.4 cm is 116.9 cm round, for 116.8: 46.02
     * and 45.98 in, both 46 in. Widened by 2 cm it is 118.8 cm, 46.77, 46 3/4 in.
     */
    @Test
    void doesNotPrintAChangeFromAnInchToTheSameInch() {
        assertEquals("both 46 in, to the nearest mark", foldOnTheOtherTape("1 mm"));
        assertEquals("46 in to 46¾ in", foldOnTheOtherTape("2"));
    }

    private static String foldOnTheOtherTape(String by) {
        int from = SMOCK.indexOf("alterations:");
        return worksheet(
                        SMOCK.substring(0, from).replace("[28, 84]", "[28.4, 84]")
                                + "alterations: [{widen: right, by: "
                                + by
                                + "}]\n")
                .blocks()
                .stream()
                .filter(Block.Rows.class::isInstance)
                .flatMap(block -> ((Block.Rows) block).table().rows().stream())
                .filter(row -> row.get(0).value().own().contains("its fold"))
                .map(row -> row.get(2).value().other())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void keepsTwoAlterationsOfOneNameApart() {
        assertTrue(rows(2).contains("band: the placket: 86 cm, 87 cm"), rows(2)::toString);
    }

    @Test
    void saysWhereThereAreTooManyToTell() {
        String pieces =
                IntStream.range(0, 60)
                        .mapToObj(i -> "    p" + i + ": {cut: 1, rectangle: [20, 40]}\n")
                        .collect(Collectors.joining());
        Worksheet sheet =
                worksheet(
                        "title: Smock\nunits: cm\npattern:\n  pieces:\n"
                                + pieces
                                + "alterations:\n"
                                + "  - {widen: right, by: 1}\n".repeat(60));
        assertEquals(
                List.of(
                        new Block.Prose(
                                "What follows from each of the 60 alterations is not told: there"
                                        + " are too many of them for so many pieces. Use the"
                                        + " printed sheets, not the marks of the pattern.")),
                sheet.blocks());
    }
}
