package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** What a maker's slip brings: one clear message, exit code 1, and the old notebook as it was. */
class BadInputTest {
    @TempDir Path folder;

    /**
     * A slip in the apron's file.
     *
     * @param sound what stands there
     * @param slip what she wrote instead
     * @param place the line and column that must be named
     * @param words what the message must say
     */
    private record Slip(String sound, String slip, String place, String words) {}

    private static final List<Slip> SLIPS =
            List.of(
                    new Slip("title: Apron", "titel: Apron", "1:1", "right would be `title`"),
                    new Slip("units: cm", "units: inch", "2:8", "one of `cm`, `in`"),
                    new Slip("[160, 250]", "[160, wide]", "5:17", "found `wide`"),
                    new Slip("[160, 250]", "160 x 250", "5:11", "two values"),
                    new Slip("[160, 250]", "[160, 4 km]", "5:17", "unknown unit `km`"),
                    new Slip("[160, 250]", "[160, 4000 m]", "5:17", "found `4000 m`"),
                    new Slip("[160, 250]", "[-160, 250]", "5:12", "found `-160`"),
                    new Slip("[160, 250]", "[160,5, 250]", "5:11", "a comma parts values"),
                    new Slip("140 g/m2", "140", "6:13", "without a unit"),
                    new Slip("left: 1,", "left: 1,5 cm,", "7:18", "`1.5 cm` with a point"),
                    new Slip("round: 6", "round: -6", "9:44", "found `-6`"),
                    new Slip("at: [40, 60]", "at: [400, 60]", "9:27", "outside"),
                    new Slip("trim: {left: 1", "trim: {left: 159.5", "7:11", "leaves no cloth"),
                    new Slip("length: 40", "length: 4O", "14:13", "found `4O`"),
                    new Slip("buttons: 3", "buttons: 30", "16:14", "at most"),
                    new Slip("buttons: 3", "buttons: three", "16:14", "a whole number"),
                    new Slip("thick: 3 mm", "thik: 3 mm", "17:29", "`thick`"),
                    new Slip("last: 8", "last: 39", "19:11", "above the first"),
                    new Slip("holes: level", "holes: levle", "20:12", "`level`"),
                    new Slip("laps: right over left", "laps: right", "21:11", "`right over left`"),
                    new Slip("clear: 1", "clear 1", "11:5", "a colon"),
                    new Slip("closures:", "log: {}", "12:1", "does not work out yet"),
                    new Slip("units: cm", "units: cm\npaper: [9, 9]", "3:8", "14.7 cm"));

    @TestFactory
    Stream<DynamicTest> namesThePlaceOfEachSlip() {
        return SLIPS.stream().map(slip -> DynamicTest.dynamicTest(slip.slip(), () -> check(slip)));
    }

    @Test
    void tellsTheFirstOfManyMistakesAndCountsTheRest() {
        StringBuilder text = new StringBuilder(Desktop.APRON);
        for (int i = 0; i < 362; i++) {
            text.append("strange ").append(i).append(": 1\n");
        }
        Desktop desktop = new Desktop(folder).with("projects/apron/project.yaml", text.toString());
        assertEquals(Secondbolt.REFUSED, desktop.run("check", "projects/apron"));
        List<String> lines = desktop.err().lines().toList();
        assertEquals(50, lines.stream().filter(line -> line.contains(": mistake: ")).count());
        assertEquals(
                List.of("and 312 more", "362 mistakes"),
                lines.subList(lines.size() - 2, lines.size()));
    }

    @Test
    void tellsTooManyNamesAtOnce() {
        StringBuilder text = new StringBuilder("title: a\nunits: cm\ncloth:\n");
        for (int i = 0; i < 501; i++) {
            text.append("  c").append(i).append(": {size: [100, 100]}\n");
        }
        Desktop desktop = new Desktop(folder).with("projects/apron/project.yaml", text.toString());
        assertEquals(Secondbolt.REFUSED, desktop.run("check", "projects/apron"));
        assertTrue(desktop.err().contains("4:3: mistake: found 501 names"), desktop.err());
        assertTrue(desktop.err().endsWith("1 mistake\n"), desktop.err());
    }

    @Test
    void tellsTooManyCopiesAtOnce() {
        StringBuilder text = new StringBuilder("title: a\nunits: cm\npattern:\n  pieces:\n");
        for (int i = 0; i < 21; i++) {
            text.append("    p").append(i).append(": {cut: 100 pairs, rectangle: [5, 5]}\n");
        }
        Desktop desktop = new Desktop(folder).with("projects/apron/project.yaml", text.toString());
        assertEquals(Secondbolt.REFUSED, desktop.run("check", "projects/apron"));
        assertTrue(
                desktop.err()
                        .contains(
                                "5:5: mistake: found 4200 copies of all pieces together; right"
                                        + " would be at most 4000 in one project"),
                desktop.err());
        assertTrue(desktop.err().endsWith("1 mistake\n"), desktop.err());
    }

    @Test
    void tellsTooManyDesignsAtOnce() {
        StringBuilder text = new StringBuilder("title: a\nunits: cm\ndesigns:\n");
        for (int i = 0; i < 17; i++) {
            text.append("  d").append(i).append(": {uses: [front]}\n");
        }
        text.append("pattern:\n  pieces:\n    front: {cut: 1, rectangle: [5, 5]}\n");
        Desktop desktop = new Desktop(folder).with("projects/apron/project.yaml", text.toString());
        assertEquals(Secondbolt.REFUSED, desktop.run("check", "projects/apron"));
        assertTrue(desktop.err().contains("4:3: mistake: found 17 names"), desktop.err());
        assertTrue(desktop.err().contains("at most 16"), desktop.err());
    }

    @Test
    void tellsTooManyPointsAtOnce() {
        StringBuilder drawing = new StringBuilder("<path id=\"edge\" d=\"M 200 100");
        for (int i = 1; i < 4_500; i++) {
            double turn = 2 * Math.PI * i / 4_500;
            drawing.append(" L ").append(100 + 100 * Math.cos(turn));
            drawing.append(' ').append(100 + 100 * Math.sin(turn));
        }
        String svg =
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"200mm\" height=\"200mm\""
                        + " viewBox=\"0 0 200 200\">"
                        + drawing
                        + " Z\"/></svg>";
        StringBuilder text = new StringBuilder("title: a\nunits: cm\npattern:\n  pieces:\n");
        for (int i = 0; i < 5; i++) {
            text.append("    p").append(i).append(": {cut: 1, svg: round.svg}\n");
        }
        Desktop desktop =
                new Desktop(folder)
                        .with("projects/apron/project.yaml", text.toString())
                        .with("projects/apron/round.svg", svg);
        assertEquals(Secondbolt.REFUSED, desktop.run("check", "projects/apron"));
        assertTrue(
                desktop.err()
                        .contains(
                                "5:5: mistake: found 22500 points of all pieces together; right"
                                        + " would be at most 20000 in one project"),
                desktop.err());
        assertTrue(desktop.err().endsWith("1 mistake\n"), desktop.err());
    }

    private void check(Slip slip) {
        assertTrue(Desktop.APRON.contains(slip.sound()), slip.sound());
        String text = Desktop.APRON.replace(slip.sound(), slip.slip());
        Desktop desktop = new Desktop(folder).with("projects/apron/project.yaml", text);
        assertEquals(Secondbolt.REFUSED, desktop.run("check", "projects/apron"), desktop.out());
        String first = "projects/apron/project.yaml:" + slip.place() + ": mistake: found ";
        assertTrue(desktop.err().startsWith(first), desktop.err());
        assertTrue(desktop.err().contains(slip.words()), desktop.err());
        assertFalse(desktop.err().contains("\tat "), desktop.err());
    }

    @Test
    void tellsTwelveMistakesInOneGo() {
        String text =
                """
                titel: Apron
                units: cm
                paper: a5
                cloth:
                  sheet:
                    size: [160, 4 km]
                    weight: 140
                    trim: {left: 1, right: -1}
                    flaws:
                      - {what: stain, at: [40], round: 6}
                      - {what: worn, at: [80, 150], sise: [30, 40]}
                    clear: wide
                closures:
                  back:
                    length: 40
                    extension: 2
                    buttons: 0
                    button: {across: 15 mm, thick: 3,5 mm}
                    first: 2
                    last: 8
                    holes: sideways
                    laps: right over left
                log: {}
                """;
        Desktop desktop = new Desktop(folder).with("projects/apron/project.yaml", text);
        assertEquals(Secondbolt.REFUSED, desktop.run("check", "projects"));
        List<String> places =
                desktop.err()
                        .lines()
                        .filter(line -> line.contains(": mistake: "))
                        .map(line -> line.replaceAll("^.*yaml:(\\d+:\\d+): mistake.*$", "$1"))
                        .toList();
        assertEquals(
                List.of(
                        "1:1", "3:8", "6:17", "7:13", "8:28", "10:27", "11:37", "12:12", "17:14",
                        "18:36", "21:12", "23:1"),
                places,
                desktop.err());
        assertTrue(desktop.err().endsWith("12 mistakes\n"), desktop.err());
    }

    @Test
    void tellsWhatIsNoProjectFileAtAll() {
        Desktop desktop =
                new Desktop(folder)
                        .with("empty/project.yaml", "")
                        .with("binary/project.yaml", new byte[] {'t', 0, 1, 2})
                        .with("latin/project.yaml", new byte[] {'t', ':', ' ', (byte) 0xE9, '\n'})
                        .with("prose/project.yaml", "Dear diary, today I cut.\n");
        for (String name : List.of("missing", "empty", "binary", "latin", "prose")) {
            assertEquals(Secondbolt.REFUSED, desktop.run("check", name), name);
            assertTrue(desktop.err().endsWith("1 mistake\n"), desktop.err());
        }
    }

    @Test
    void asksAboutAProjectFileUnderAnotherName() {
        Desktop desktop =
                new Desktop(folder)
                        .with("projects/apron/project.yaml", Desktop.APRON)
                        .with("projects/smock/project.yml", Desktop.APRON);
        for (String path : List.of("projects/smock", "projects")) {
            assertEquals(Secondbolt.REFUSED, desktop.run("check", path), path);
            assertTrue(
                    desktop.err()
                            .startsWith(
                                    "projects/smock/project.yml:1:1: mistake: found `project.yml`,"
                                            + " which is not read; right would be the same file"
                                            + " named `project.yaml`"),
                    desktop.err());
        }
    }

    @Test
    void leavesTheOldNotebookAsItWas() throws Exception {
        Desktop desktop = new Desktop(folder).with("projects/apron/project.yaml", Desktop.APRON);
        assertEquals(Secondbolt.DONE, desktop.run());
        String before = desktop.read("site/apron/index.html");
        desktop.with("projects/apron/project.yaml", Desktop.APRON.replace("last: 8", "last: 80"));
        assertEquals(Secondbolt.REFUSED, desktop.run());
        assertEquals(before, desktop.read("site/apron/index.html"));
        assertTrue(Files.exists(folder.resolve("site/apron/back.pdf")));
    }

    @Test
    void tellsWhenTheNotebookCannotBeWritten() {
        Desktop desktop =
                new Desktop(folder)
                        .with("projects/apron/project.yaml", Desktop.APRON)
                        .with("taken", "a file, not a folder");
        assertEquals(Secondbolt.REFUSED, desktop.run("notebook", "--out", "taken"));
        assertTrue(desktop.err().contains("taken"), desktop.err());
        assertFalse(desktop.err().contains("fault of the program"), desktop.err());
    }

    @Test
    void refusesAPrinterThatWasMeasuredWrong() {
        Desktop desktop =
                new Desktop(folder)
                        .with("projects/apron/project.yaml", Desktop.APRON)
                        .with("local.yaml", "printer: {square measured: [99.4, 100]}\n");
        assertEquals(Secondbolt.REFUSED, desktop.run());
        assertTrue(desktop.err().startsWith("local.yaml:1:29: mistake"), desktop.err());
    }

    @Test
    void tellsUsageApartFromMistakes() {
        Desktop desktop = new Desktop(folder).with("projects/apron/project.yaml", Desktop.APRON);
        assertEquals(Secondbolt.USAGE, desktop.run("notbook"));
        assertEquals(Secondbolt.USAGE, desktop.run("sheet", "projects/apron", "front"));
        assertTrue(desktop.err().contains("no sheet `front`; there are back"), desktop.err());
        assertEquals(
                Secondbolt.USAGE, desktop.run("sheet", "projects/apron", "back", "--paper", "a9"));
    }
}
