package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a maker calls her folders, pieces and closures, no file is made twice. */
class NamesTest {
    private static final String TIED =
            """
            title: Apron
            wearer: {age: adult}
            units: cm
            closures:
              neck: {length: 20, ties: 2, first: 2, last: 2}
            """;

    @TempDir Path folder;

    /** Closures come before pieces, and both before the sheets that have no name of hers. */
    @Test
    void givesSheetsThatAreCalledAlikeNamesOfTheirOwn() {
        String text =
                """
                title: Alike
                units: cm
                pattern:
                  rights: mine
                  seam allowance: {of: 1, included: false}
                  pieces:
                    front: {cut: 1, rectangle: [30, 60]}
                    front!: {cut: 1, rectangle: [30, 60]}
                closures:
                """
                        + closure("band")
                        + closure("band test")
                        + closure("grid")
                        + closure("All pieces")
                        + closure("piece front")
                        + closure("CON");
        Desktop desktop = new Desktop(folder).with("projects/alike/project.yaml", text);
        assertEquals(0, desktop.run("notebook", "--quiet"), desktop.err());
        for (String name :
                List.of(
                        "band",
                        "band-test",
                        "band-test-2",
                        "grid",
                        "grid-2",
                        "all-pieces",
                        "all-pieces-2",
                        "piece-front",
                        "piece-front-2",
                        "piece-front-3",
                        "sheet-con")) {
            assertTrue(Files.exists(folder.resolve("site/alike/" + name + ".pdf")), name);
            assertEquals(0, desktop.run("sheet", "projects/alike", name), desktop.err());
        }
        String page = desktop.read("site/alike/index.html");
        assertTrue(page.contains("href=\"piece-front-3.pdf\""), page);
        assertTrue(page.contains("Piece: front!"), page);
    }

    private static String closure(String name) {
        return "  "
                + name
                + ": {length: 40, extension: 2, buttons: 3, first: 2, last: 8, holes: level,\n"
                + "    button: {across: 15 mm, thick: 3 mm}, laps: right over left}\n";
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "look",
                "Look",
                "Index.html",
                "project-file.html",
                "contents.json",
                ".unfinished.json",
                "index.html.part~",
                "CON",
                "aux.old",
                "lpt1",
                "apron ",
                "apron.",
                "a:b",
                "a\\b"
            })
    void tellsWhichFolderCannotHavePages(String name) {
        Desktop desktop = new Desktop(folder).with("projects/" + name + "/project.yaml", TIED);
        String place = "projects/" + name.replace('\\', '/') + "/project.yaml:1:1: mistake: found ";
        for (List<String> command :
                List.of(List.of("check", "projects/" + name), List.of("notebook"))) {
            assertEquals(1, desktop.run(command.toArray(String[]::new)));
            assertTrue(desktop.err().startsWith(place + "a project's folder"), desktop.err());
            assertTrue(desktop.err().contains("under another name"), desktop.err());
        }
        assertFalse(Files.exists(folder.resolve("site")));
    }

    @Test
    void tellsOfFoldersThatSomeMachinesTakeForOne() {
        Desktop desktop =
                new Desktop(folder)
                        .with("projects/Apron/project.yaml", TIED)
                        .with("projects/apron/project.yaml", TIED)
                        .with("projects/a\u0308rmel/project.yaml", TIED)
                        .with("projects/\u00E4rmel/project.yaml", TIED)
                        .with("others/apron/project.yaml", TIED);
        assertEquals(1, desktop.run("check", "projects"));
        assertTrue(desktop.err().contains("folders `Apron` and `apron`"), desktop.err());
        assertTrue(desktop.err().endsWith("2 mistakes\n"), desktop.err());
        assertEquals(1, desktop.run("check", "projects/Apron", "projects/apron"));
        assertEquals(0, desktop.run("check", "projects/Apron", "others/apron"), desktop.err());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "50 % off",
                "#1",
                "what?",
                "\u00C4rmel 2",
                "\"her\" <script>",
                "a&b;c",
                ".hidden",
                "it's",
                "上着",
                "plus+",
                "100%25"
            })
    void linksToFoldersOfAnyOtherName(String name) {
        Desktop desktop = new Desktop(folder).with("projects/" + name + "/project.yaml", TIED);
        assertEquals(0, desktop.run("notebook", "--quiet"), desktop.err());
        String index = desktop.read("site/index.html");
        String link = index.replaceAll("(?s).*<h2 dir=\"auto\"><a href=\"([^\"]*)\".*", "$1");
        URI site = folder.resolve("site").toUri();
        Path page = Path.of(site.resolve(link.replace("&#39;", "'")));
        assertEquals(folder.resolve("site").resolve(name).resolve("index.html"), page);
        assertTrue(Files.exists(page), link);
    }
}
