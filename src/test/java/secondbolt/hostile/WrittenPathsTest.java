package secondbolt.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import secondbolt.app.Desktop;

/** What is written lies in the working folder, and replaces nothing that someone else made. */
class WrittenPathsTest {
    @TempDir Path temporary;
    private TrappedDesk desk;

    @BeforeEach
    void layOut() throws IOException {
        desk = new TrappedDesk(temporary);
    }

    @TestFactory
    Stream<DynamicTest> aSheetReplacesNothingButASheet() {
        String sheet = "sheet projects/apron band";
        String named = sheet + " --out sheets/x.pdf";
        String at = "sheets/x.pdf cannot be written: ";
        return desk.each(
                List.of(
                        new TrappedDesk.Case(
                                "band.pdf",
                                Trap.HERS,
                                sheet,
                                "band.pdf cannot be written: not made"),
                        new TrappedDesk.Case("sheets/x.pdf", Trap.FOLDER, named, at + "a folder"),
                        new TrappedDesk.Case("sheets/x.pdf", Trap.PIPE, named, at + "a pipe"),
                        new TrappedDesk.Case("sheets/x.pdf", Trap.BROKEN, named, at + "a link"),
                        new TrappedDesk.Case(
                                "sheets/x.pdf", desk.link("hers.txt"), named, at + "a link"),
                        new TrappedDesk.Case(
                                "sheets/x.pdf", Trap.HERS, named, at + "not made by Secondbolt"),
                        new TrappedDesk.Case(
                                "sheets/x.pdf",
                                path -> Files.writeString(path, "%PDF-1.6\nhers"),
                                named,
                                at + "not made by Secondbolt"),
                        new TrappedDesk.Case(
                                "sheets", desk.link("."), named, at + "a link that leads out"),
                        new TrappedDesk.Case(
                                "any",
                                Trap.HERS,
                                sheet + " --out /dev/null",
                                "/dev/null cannot be"),
                        new TrappedDesk.Case(
                                "any",
                                Trap.HERS,
                                sheet + " --out no/x.pdf",
                                "no/x.pdf cannot be")));
    }

    @TestFactory
    Stream<DynamicTest> aSiteLiesInAFolderOfItsOwn() {
        return desk.each(
                List.of(
                        new TrappedDesk.Case(
                                "site", Trap.HERS, "notebook", "site cannot be written: a file"),
                        new TrappedDesk.Case(
                                "site", Trap.PIPE, "notebook", "site cannot be written: a pipe"),
                        new TrappedDesk.Case(
                                "site", Trap.BROKEN, "notebook", "site cannot be written: a link"),
                        new TrappedDesk.Case(
                                "site",
                                desk.link("."),
                                "notebook",
                                "site cannot be written: a link"),
                        new TrappedDesk.Case(
                                "site/apron",
                                desk.link("."),
                                "notebook",
                                "site/apron: a link stands"),
                        new TrappedDesk.Case(
                                "site/apron", Trap.HERS, "notebook", "site/apron: a file stands"),
                        new TrappedDesk.Case(
                                "site/.unfinished.json",
                                desk.link("hers.txt"),
                                "notebook",
                                ".unfinished.json: a link stands"),
                        new TrappedDesk.Case(
                                "site/contents.json",
                                desk.link("hers.txt"),
                                "notebook",
                                "contents.json: a link stands"),
                        new TrappedDesk.Case(
                                "site/index.html.part~",
                                desk.link("hers.txt"),
                                "notebook",
                                "index.html.part~: not made by Secondbolt"),
                        new TrappedDesk.Case(
                                "site/.secondbolt.lock",
                                desk.link("hers.txt"),
                                "notebook",
                                ".secondbolt.lock: not made by Secondbolt"),
                        new TrappedDesk.Case(
                                "site/index.html",
                                Trap.HERS,
                                "notebook",
                                "index.html: not made by"),
                        new TrappedDesk.Case(
                                "any", Trap.HERS, "notebook --out /", "/ cannot be written"),
                        new TrappedDesk.Case(
                                "any",
                                Trap.HERS,
                                "notebook --out /dev/null",
                                "/dev/null cannot be"),
                        new TrappedDesk.Case(
                                "any", Trap.HERS, "notebook --out projects", "projects cannot be"),
                        new TrappedDesk.Case(
                                "any",
                                Trap.HERS,
                                "notebook --out projects/site",
                                "projects/site cannot be"),
                        new TrappedDesk.Case(
                                "projects/hers",
                                path -> {
                                    Files.writeString(
                                            desk.outside().resolve("project.yaml"),
                                            SoundProject.BAND);
                                    Files.createSymbolicLink(path, desk.outside());
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
                                            Desktop desktop = desk.anew();
                                            Files.createDirectories(
                                                    desk.folder().resolve(path).getParent());
                                            desk.link(".").at(desk.folder().resolve(path));
                                            Map<String, String> before = Trees.in(desk.outside());

                                            assertEquals(0, desktop.run("notebook"), desktop.err());
                                            assertEquals(before, Trees.in(desk.outside()));
                                        }));
    }

    @Test
    void aSheetMadeAgainReplacesItself() throws IOException {
        Desktop desktop = desk.anew();
        for (int i = 0; i < 2; i++) {
            assertEquals(0, desktop.run("sheet", "projects/apron", "band"), desktop.err());
        }
        assertEquals(
                1,
                Trees.in(desk.folder()).keySet().stream()
                        .filter(n -> n.startsWith("band"))
                        .count());
    }
}
