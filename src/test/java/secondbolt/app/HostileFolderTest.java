package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * A working folder that came from a stranger, or in which something went wrong: nothing outside of
 * it is read or written, nothing hangs, and each thing is told by its name.
 */
class HostileFolderTest {
    private static final String BAND =
            """
            title: Band
            units: cm
            closures:
              band: {length: 65, extension: 1.8, buttons: 7, first: 1.5, last: 11, holes: upright,
                button: {across: 11 mm, thick: 2.5 mm}, laps: left over right}
            """;

    private static final String DRAWN =
            """
            title: Bag
            units: cm
            cloth: {Laken: {size: [120, 90], prewash: done, flaws: none}}
            pattern:
              seam allowance: {of: 1, included: false}
              pieces:
                bag: {cut: 1, svg: bag.svg}
            """;

    @TempDir Path temporary;
    private Path outside;
    private Path folder;

    @BeforeEach
    void twoFolders() throws IOException {
        outside = Files.createDirectories(temporary.resolve("outside"));
        folder = Files.createDirectories(temporary.resolve("downloaded"));
        Files.writeString(outside.resolve("hers.yaml"), BAND);
        Files.writeString(outside.resolve("hers.txt"), "hers");
    }

    /** What is made at a path of the folder. */
    @FunctionalInterface
    private interface Trap {
        void at(Path path) throws IOException;
    }

    private static final Trap FOLDER = Files::createDirectories;
    private static final Trap PIPE = HostileFolderTest::pipe;
    private static final Trap CIRCLE = path -> Files.createSymbolicLink(path, path);
    private static final Trap BROKEN =
            path -> Files.createSymbolicLink(path, path.resolveSibling("nowhere"));
    private static final Trap LARGE = path -> Files.writeString(path, "# long\n".repeat(200_000));
    private static final Trap HERS = path -> Files.writeString(path, "hers");

    private Trap link(String outsideFile) {
        return path -> Files.createSymbolicLink(path, outside.resolve(outsideFile));
    }

    private static void pipe(Path path) {
        try {
            assertEquals(0, new ProcessBuilder("mkfifo", path.toString()).start().waitFor());
        } catch (IOException e) {
            Assumptions.abort("no pipes here");
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    /**
     * One case.
     *
     * @param path of what is in the way
     * @param trap what is there
     * @param command that is run
     * @param told what its message says
     */
    private record Case(String path, Trap trap, String command, String told) {}

    private Stream<DynamicTest> each(List<Case> cases) {
        return cases.stream()
                .map(one -> DynamicTest.dynamicTest(one.path + ": " + one.told, () -> check(one)));
    }

    private Desktop desktop() {
        return new Desktop(folder)
                .with("projects/apron/project.yaml", BAND)
                .with("projects/coat/project.yaml", BAND)
                .with("projects/bag/note.txt", "no project")
                .with("sheets/note.txt", "no sheet");
    }

    /** The command refuses with the name of what is in the way; all files are as they were. */
    private void check(Case one) throws IOException {
        clear(folder);
        Desktop desktop = desktop();
        Path path = folder.resolve(one.path);
        delete(path);
        Files.createDirectories(path.getParent());
        one.trap.at(path);
        Map<String, String> before = tree(temporary);
        int code =
                Assertions.assertTimeoutPreemptively(
                        Duration.ofMinutes(1), () -> desktop.run(one.command.split(" ")));
        assertEquals(Secondbolt.REFUSED, code, desktop.err());
        assertTrue(desktop.err().contains(one.told), desktop.err());
        assertFalse(desktop.err().contains("fault of the program"), desktop.err());
        assertFalse(desktop.err().contains("Exception"), desktop.err());
        Map<String, String> after = tree(temporary);
        after.keySet()
                .removeIf(name -> name.contains("/.secondbolt/") || name.endsWith("/.secondbolt"));
        assertEquals(before, after);
    }

    private static void clear(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            for (Path one : all.toList()) {
                delete(one);
            }
        }
    }

    private static void delete(Path path) throws IOException {
        if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
            clear(path);
        }
        Files.deleteIfExists(path);
    }

    private static Map<String, String> tree(Path root) {
        Map<String, String> tree = new TreeMap<>();
        try (Stream<Path> all = Files.walk(root)) {
            for (Path one : (Iterable<Path>) all::iterator) {
                boolean isFile = Files.isRegularFile(one, LinkOption.NOFOLLOW_LINKS);
                byte[] bytes = isFile ? Files.readAllBytes(one) : new byte[0];
                String name = root.relativize(one).toString().replace('\\', '/');
                tree.put(name, bytes.length + " " + Arrays.hashCode(bytes));
            }
            return tree;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @TestFactory
    Stream<DynamicTest> whatIsReadIsAPlainFileOfTheFolder() {
        String project = "projects/apron/project.yaml";
        String at = project + ":1:1: mistake: found ";
        String plan = "projects/apron/plan.yaml";
        String planned = plan + ":1:1: mistake: found ";
        String desk = "local.yaml:1:1: mistake: found ";
        return each(
                List.of(
                        new Case(project, link("hers.yaml"), "notebook", at + "a link that leads"),
                        new Case(project, FOLDER, "notebook", at + "a folder"),
                        new Case(project, PIPE, "check projects", at + "a pipe"),
                        new Case(project, BROKEN, "notebook", at + "a link that leads nowhere"),
                        new Case(project, CIRCLE, "notebook", at + "a link that leads nowhere"),
                        new Case(project, LARGE, "notebook", at + "a file of more than 1 MB"),
                        new Case(
                                "projects/bag/project.yml",
                                HERS,
                                "notebook",
                                "projects/bag/project.yml:1:1: mistake: found"),
                        new Case(
                                "projects/bag/Project.yaml",
                                HERS,
                                "notebook",
                                "projects/bag/Project.yaml:1:1: mistake: found"),
                        new Case(
                                "projects/bag",
                                BROKEN,
                                "notebook",
                                "projects/bag:1:1: mistake: found a link that leads nowhere"),
                        new Case(plan, link("hers.yaml"), "notebook", planned + "a link that"),
                        new Case(plan, FOLDER, "pin projects/apron", planned + "a folder"),
                        new Case(plan, PIPE, "check projects/apron", planned + "a pipe"),
                        new Case(plan, BROKEN, "check projects/apron", planned + "a link that"),
                        new Case(plan, BROKEN, "pin projects/apron", planned + "a link"),
                        new Case("local.yaml", link("hers.yaml"), "notebook", desk + "a link"),
                        new Case("local.yaml", PIPE, "check projects", desk + "a pipe"),
                        new Case("local.yaml", BROKEN, "notebook", desk + "a link that leads")));
    }

    @TestFactory
    Stream<DynamicTest> whatADrawingNamesIsAPlainFileOfTheFolder() {
        Trap within = path -> Files.writeString(path, DRAWN);
        Map<String, Trap> traps =
                Map.of(
                        "`bag.svg`, which is a link that leads out",
                        link("hers.txt"),
                        "`bag.svg`, which is a pipe",
                        PIPE,
                        "`bag.svg`, which is a folder",
                        FOLDER,
                        "`bag.svg`, which is a link that leads nowhere",
                        CIRCLE,
                        "`bag.svg`, which is a file of more than 1 MB",
                        LARGE,
                        "`bag.svg`, which is no file beside the project",
                        path -> {});
        return each(
                traps.entrySet().stream()
                        .map(
                                trap ->
                                        new Case(
                                                "projects/bag/project.yaml",
                                                path -> {
                                                    within.at(path);
                                                    trap.getValue()
                                                            .at(path.resolveSibling("bag.svg"));
                                                },
                                                "check projects/bag",
                                                "project.yaml:7:24: mistake: found "
                                                        + trap.getKey()))
                        .toList());
    }

    @TestFactory
    Stream<DynamicTest> aSheetReplacesNothingButASheet() {
        String sheet = "sheet projects/apron band";
        String named = sheet + " --out sheets/x.pdf";
        String at = "sheets/x.pdf cannot be written: ";
        return each(
                List.of(
                        new Case("band.pdf", HERS, sheet, "band.pdf cannot be written: not made"),
                        new Case("sheets/x.pdf", FOLDER, named, at + "a folder"),
                        new Case("sheets/x.pdf", PIPE, named, at + "a pipe"),
                        new Case("sheets/x.pdf", BROKEN, named, at + "a link"),
                        new Case("sheets/x.pdf", link("hers.txt"), named, at + "a link"),
                        new Case("sheets/x.pdf", HERS, named, at + "not made by Secondbolt"),
                        new Case(
                                "sheets/x.pdf",
                                path -> Files.writeString(path, "%PDF-1.6\nhers"),
                                named,
                                at + "not made by Secondbolt"),
                        new Case("sheets", link("."), named, at + "a link that leads out"),
                        new Case("any", HERS, sheet + " --out /dev/null", "/dev/null cannot be"),
                        new Case("any", HERS, sheet + " --out no/x.pdf", "no/x.pdf cannot be")));
    }

    @TestFactory
    Stream<DynamicTest> aSiteLiesInAFolderOfItsOwn() {
        return each(
                List.of(
                        new Case("site", HERS, "notebook", "site cannot be written: a file"),
                        new Case("site", PIPE, "notebook", "site cannot be written: a pipe"),
                        new Case("site", BROKEN, "notebook", "site cannot be written: a link"),
                        new Case("site", link("."), "notebook", "site cannot be written: a link"),
                        new Case("site/apron", link("."), "notebook", "site/apron: a link stands"),
                        new Case("site/apron", HERS, "notebook", "site/apron: a file stands"),
                        new Case(
                                "site/.unfinished.json",
                                link("hers.txt"),
                                "notebook",
                                ".unfinished.json: a link stands"),
                        new Case(
                                "site/contents.json",
                                link("hers.txt"),
                                "notebook",
                                "contents.json: a link stands"),
                        new Case(
                                "site/index.html.part~",
                                link("hers.txt"),
                                "notebook",
                                "index.html.part~: not made by Secondbolt"),
                        new Case(
                                "site/.secondbolt.lock",
                                link("hers.txt"),
                                "notebook",
                                ".secondbolt.lock: not made by Secondbolt"),
                        new Case("site/index.html", HERS, "notebook", "index.html: not made by"),
                        new Case("any", HERS, "notebook --out /", "/ cannot be written"),
                        new Case("any", HERS, "notebook --out /dev/null", "/dev/null cannot be"),
                        new Case("any", HERS, "notebook --out projects", "projects cannot be"),
                        new Case(
                                "any",
                                HERS,
                                "notebook --out projects/site",
                                "projects/site cannot be"),
                        new Case(
                                "projects/hers",
                                path -> {
                                    Files.writeString(outside.resolve("project.yaml"), BAND);
                                    Files.createSymbolicLink(path, outside);
                                },
                                "notebook",
                                "projects/hers:1:1: mistake: found a link that leads out")));
    }

    /** What only saves work is done without where it would lie outside. */
    @TestFactory
    Stream<DynamicTest> nothingIsKeptOutside() {
        return Stream.of(".secondbolt", ".secondbolt/seals", ".secondbolt/lays")
                .map(
                        path ->
                                DynamicTest.dynamicTest(
                                        path,
                                        () -> {
                                            clear(folder);
                                            Files.createDirectories(
                                                    folder.resolve(path).getParent());
                                            link(".").at(folder.resolve(path));
                                            Map<String, String> before = tree(outside);
                                            Desktop desktop = desktop();
                                            assertEquals(0, desktop.run("notebook"), desktop.err());
                                            assertEquals(before, tree(outside));
                                        }));
    }

    @Test
    void aSheetMadeAgainReplacesItself() throws IOException {
        Desktop desktop = desktop();
        for (int i = 0; i < 2; i++) {
            assertEquals(0, desktop.run("sheet", "projects/apron", "band"), desktop.err());
        }
        assertEquals(1, tree(folder).keySet().stream().filter(n -> n.startsWith("band")).count());
    }

    /** A project that cannot be read is not one that is gone. */
    @TestFactory
    Stream<DynamicTest> pagesOfAProjectThatCannotBeReadStay() {
        Map<String, Trap> ways =
                Map.of(
                        "a link that leads nowhere", BROKEN,
                        "a folder", FOLDER,
                        "a pipe", PIPE,
                        "a folder without a project.yaml, which has pages",
                                path -> Files.writeString(path.resolveSibling("plan.txt"), ""),
                        "a file that cannot be read", HostileFolderTest::closed);
        return ways.entrySet().stream()
                .map(
                        way ->
                                DynamicTest.dynamicTest(
                                        way.getKey(),
                                        () -> staysWith(way.getValue(), way.getKey())));
    }

    private static void closed(Path path) throws IOException {
        Files.writeString(path, BAND);
        Assumptions.assumeTrue(path.toFile().setReadable(false));
        Assumptions.assumeFalse(Files.isReadable(path), "to this user rights mean nothing");
    }

    private void staysWith(Trap trap, String told) throws IOException {
        clear(folder);
        Desktop desktop = desktop();
        assertEquals(0, desktop.run("notebook"), desktop.err());
        Map<String, String> site = tree(folder.resolve("site"));
        Path project = folder.resolve("projects/coat/project.yaml");
        Files.delete(project);
        trap.at(project);
        assertEquals(1, desktop.run("notebook"), desktop.out());
        assertTrue(desktop.err().startsWith("projects/coat"), desktop.err());
        assertTrue(desktop.err().contains(told), desktop.err());
        assertEquals(site, tree(folder.resolve("site")));
    }

    @Test
    void aListThatNamesFilesOfOthersDeletesNone() throws IOException {
        Desktop desktop = desktop();
        assertEquals(0, desktop.run("notebook"), desktop.err());
        List<String> hers = List.of("hers.txt", "coat/photo.jpg", "coat/notes.pdf", "hers.html");
        String list = desktop.read("site/contents.json");
        for (String path : hers) {
            desktop.with("site/" + path, "hers");
            list = list.replaceFirst("\"files\": \\[", "\"files\": [\"" + path + "\", ");
        }
        desktop.with("site/contents.json", list);
        delete(folder.resolve("projects/coat"));
        assertEquals(0, desktop.run("notebook"), desktop.err());
        for (String path : hers) {
            assertEquals("hers", desktop.read("site/" + path));
            assertTrue(
                    desktop.err().contains("site/" + path + ": not made by Secondbolt"),
                    desktop.err());
        }
        assertFalse(Files.exists(folder.resolve("site/coat/index.html")));
    }

    @Test
    void aListThatNamesAFileOfOthersOverwritesNone() throws IOException {
        Desktop desktop = desktop();
        desktop.with("site/index.html", "hers");
        desktop.with(
                "site/contents.json", "{\"secondbolt\": \"0.1.0\", \"files\": [\"index.html\"]}");
        assertEquals(1, desktop.run("notebook"), desktop.out());
        assertEquals("hers", desktop.read("site/index.html"));
    }

    @TestFactory
    Stream<DynamicTest> aListThatIsSpoiltIsMadeAgain() {
        return Stream.of("", "{\n  \"secondbo", "{}", "[1]", "\0\0\0", "gone")
                .map(text -> DynamicTest.dynamicTest("list " + text, () -> isMadeAgain(text)));
    }

    private void isMadeAgain(String text) throws IOException {
        clear(folder);
        Desktop desktop = desktop();
        assertEquals(0, desktop.run("notebook"), desktop.err());
        Map<String, String> good = tree(folder.resolve("site"));
        for (String command : List.of("notebook", "notebook projects/apron")) {
            for (String list : List.of("contents.json", ".unfinished.json")) {
                desktop.with("site/" + list, text);
                if (text.equals("gone")) {
                    Files.delete(folder.resolve("site").resolve(list));
                }
                assertEquals(0, desktop.run(command.split(" ")), desktop.err());
                assertEquals(good, tree(folder.resolve("site")));
            }
        }
        Files.delete(folder.resolve("site/contents.json"));
        delete(folder.resolve("projects/coat"));
        assertEquals(0, desktop.run("notebook"), desktop.err());
        assertFalse(Files.exists(folder.resolve("site/coat")), "found without the list");
    }
}
