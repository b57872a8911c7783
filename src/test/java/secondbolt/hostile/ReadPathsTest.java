package secondbolt.hostile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** What is read is a plain file of the working folder; anything else is told by its name. */
class ReadPathsTest {
    @TempDir Path temporary;
    private TrappedDesk desk;

    @BeforeEach
    void layOut() throws IOException {
        desk = new TrappedDesk(temporary);
    }

    @TestFactory
    Stream<DynamicTest> whatIsReadIsAPlainFileOfTheFolder() {
        String project = "projects/apron/project.yaml";
        String at = project + ":1:1: mistake: found ";
        String plan = "projects/apron/plan.yaml";
        String planned = plan + ":1:1: mistake: found ";
        String local = "local.yaml:1:1: mistake: found ";
        return desk.each(
                List.of(
                        new TrappedDesk.Case(
                                project,
                                desk.link("hers.yaml"),
                                "notebook",
                                at + "a link that leads"),
                        new TrappedDesk.Case(project, Trap.FOLDER, "notebook", at + "a folder"),
                        new TrappedDesk.Case(project, Trap.PIPE, "check projects", at + "a pipe"),
                        new TrappedDesk.Case(
                                project, Trap.BROKEN, "notebook", at + "a link that leads nowhere"),
                        new TrappedDesk.Case(
                                project, Trap.CIRCLE, "notebook", at + "a link that leads nowhere"),
                        new TrappedDesk.Case(
                                project, Trap.LARGE, "notebook", at + "a file of more than 1 MB"),
                        new TrappedDesk.Case(
                                "projects/bag/project.yml",
                                Trap.HERS,
                                "notebook",
                                "projects/bag/project.yml:1:1: mistake: found"),
                        new TrappedDesk.Case(
                                "projects/bag/Project.yaml",
                                Trap.HERS,
                                "notebook",
                                "projects/bag/Project.yaml:1:1: mistake: found"),
                        new TrappedDesk.Case(
                                "projects/bag",
                                Trap.BROKEN,
                                "notebook",
                                "projects/bag:1:1: mistake: found a link that leads nowhere"),
                        new TrappedDesk.Case(
                                plan, desk.link("hers.yaml"), "notebook", planned + "a link that"),
                        new TrappedDesk.Case(
                                plan, Trap.FOLDER, "pin projects/apron", planned + "a folder"),
                        new TrappedDesk.Case(
                                plan, Trap.PIPE, "check projects/apron", planned + "a pipe"),
                        new TrappedDesk.Case(
                                plan, Trap.BROKEN, "check projects/apron", planned + "a link that"),
                        new TrappedDesk.Case(
                                plan, Trap.BROKEN, "pin projects/apron", planned + "a link"),
                        new TrappedDesk.Case(
                                "local.yaml", desk.link("hers.yaml"), "notebook", local + "a link"),
                        new TrappedDesk.Case(
                                "local.yaml", Trap.PIPE, "check projects", local + "a pipe"),
                        new TrappedDesk.Case(
                                "local.yaml",
                                Trap.BROKEN,
                                "notebook",
                                local + "a link that leads")));
    }

    @TestFactory
    Stream<DynamicTest> whatADrawingNamesIsAPlainFileOfTheFolder() {
        Trap within = path -> Files.writeString(path, SoundProject.DRAWN);
        Map<String, Trap> traps =
                Map.of(
                        "`bag.svg`, which is a link that leads out",
                        desk.link("hers.txt"),
                        "`bag.svg`, which is a pipe",
                        Trap.PIPE,
                        "`bag.svg`, which is a folder",
                        Trap.FOLDER,
                        "`bag.svg`, which is a link that leads nowhere",
                        Trap.CIRCLE,
                        "`bag.svg`, which is a file of more than 1 MB",
                        Trap.LARGE,
                        "`bag.svg`, which is no file beside the project",
                        Trap.NOTHING);
        return desk.each(
                traps.entrySet().stream()
                        .map(
                                trap ->
                                        new TrappedDesk.Case(
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
}
