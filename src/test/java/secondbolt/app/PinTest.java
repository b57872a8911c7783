package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The plan of cutting is pinned beside the project file. */
class PinTest {
    private static final String PILLOW =
            """
            title: Kissen
            units: cm
            cloth: {Laken: {size: [120, 90], prewash: done, flaws: none, surveyed: {on: 2026-05-01, by: looked over}}}
            lay: {effort: quick}
            pattern:
              seam allowance: {of: 1, included: false}
              pieces:
                Vorderseite: {cut: 1, rectangle: [40, 40]}
                Rückseite: {cut: 2, rectangle: [40, 26]}
            """;

    @TempDir Path folder;

    private Desktop desktop;
    private Path plan;

    @BeforeEach
    void aProject() {
        desktop = new Desktop(folder).with("projects/kissen/project.yaml", PILLOW);
        plan = folder.resolve("projects/kissen/plan.yaml");
    }

    private String plan() throws IOException {
        return Files.readString(plan);
    }

    @Test
    void theFileIsWrittenAndNothingElseChanges() throws IOException {
        assertEquals(0, desktop.run("notebook"));
        assertEquals(0, desktop.run("pin", "projects/kissen"));
        assertEquals(
                "projects/kissen/plan.yaml: 0 places kept, 3 new: Vorderseite, Rückseite 1,"
                        + " Rückseite 2\n",
                desktop.out());
        assertTrue(plan().contains("  - piece: Rückseite 2\n    cloth: Laken\n    at: ["), plan());
        assertEquals(0, desktop.run("notebook"));
        assertTrue(desktop.out().contains("0 files written"), desktop.out());
        String before = plan();
        assertEquals(0, desktop.run("pin", "projects/kissen"));
        assertEquals("projects/kissen/plan.yaml: 3 places kept, 0 new\n", desktop.out());
        assertEquals(before, plan());
    }

    @Test
    void pinnedAnewOnlyWhatIsCutKeepsItsPlace() throws IOException {
        assertEquals(0, desktop.run("pin", "projects/kissen/project.yaml"));
        String cut = plan().replaceFirst("cut: no", "cut: yes");
        desktop.with("projects/kissen/plan.yaml", cut);
        assertEquals(0, desktop.run("pin", "--anew", "projects/kissen"));
        assertTrue(desktop.out().contains("1 place kept, 2 new"), desktop.out());
        assertTrue(plan().contains("cut: yes"));
        desktop.with("projects/kissen/plan.yaml", plan().replace("cut: yes", "cut: no"));
        assertEquals(0, desktop.run("pin", "--anew", "projects/kissen"));
        assertTrue(desktop.out().contains("0 places kept, 3 new"), desktop.out());
    }

    @Test
    void aMistakeInThePlanIsToldAndThePlanIsLeftAsItIs() throws IOException {
        String wrong = "units: cm\npieces:\n  - {piece: Vorderseite, cloth: Laken, at: [1 1]}\n";
        desktop.with("projects/kissen/plan.yaml", wrong);
        for (String command : new String[] {"pin", "check"}) {
            assertEquals(1, desktop.run(command, "projects/kissen"));
            assertTrue(
                    desktop.err().startsWith("projects/kissen/plan.yaml:3:44: mistake: found"),
                    desktop.err());
        }
        assertEquals(wrong, plan());
    }

    @Test
    void twoPiecesInOneLineAreRefusedAndNotLost() throws IOException {
        String line =
                "units: cm\npieces: [{piece: Vorderseite, cloth: Laken, at: [0, 0], cut: yes}, {piece:"
                        + " Rückseite 1, cloth: Laken, at: [50, 0]}]\n";
        desktop.with("projects/kissen/plan.yaml", line);
        assertEquals(1, desktop.run("pin", "projects/kissen"));
        assertTrue(desktop.err().contains("each piece on lines of its own"), desktop.err());
        assertEquals(line, plan());
    }

    /** What is ticked in a plan that cannot be brought up to date is not lost by laying anew. */
    @Test
    void layingAnewRefusesWhatItCannotKeep() throws IOException {
        String entries = "{piece: Vorderseite, cloth: Laken, at: [0, 0], cut: yes}";
        for (String plan :
                new String[] {
                    "units: cm\npieces: [" + entries + "]\n",
                    "units: cm\npieces: [\n  " + entries + "\n]\n",
                    "{units: cm, pieces: [" + entries + "]}\n",
                    "units: cm\npieces:\n  -\n    " + entries + "\n",
                }) {
            desktop.with("projects/kissen/plan.yaml", plan);
            assertEquals(1, desktop.run("pin", "--anew", "projects/kissen"));
            assertTrue(desktop.err().contains("on lines of"), desktop.err());
            assertEquals(plan, plan());
        }
    }

    @Test
    void aMistakeIsToldWhereItStandsWhenAllIsLaidAnew() {
        desktop.with(
                "projects/kissen/plan.yaml",
                """
                units: cm
                pieces:
                  - {piece: Vorderseite, cloth: Laken, at: [0, 0]}
                  - {piece: Rückseite 1, cloth: Lacken, at: [50, 0], cut: yes}
                """);
        assertEquals(1, desktop.run("pin", "--anew", "projects/kissen"));
        assertTrue(
                desktop.err().startsWith("projects/kissen/plan.yaml:4:33: mistake: found `Lacken`"),
                desktop.err());
    }

    /** Nothing is told to be sound, and nothing made, as if there were no plan. */
    @Test
    void aPlanThatCannotBeReadIsAMistake() throws IOException {
        byte[][] plans = {
            new byte[0],
            {(byte) 0xff, (byte) 0xfe, 'u', 0},
            "units: cm\npieces: []\n# Ärmel\n".getBytes(StandardCharsets.ISO_8859_1),
            "# long\n".repeat(200_000).getBytes(StandardCharsets.UTF_8),
            "- piece\n".getBytes(StandardCharsets.UTF_8)
        };
        for (byte[] bytes : plans) {
            desktop.with("projects/kissen/plan.yaml", bytes);
            isRefused();
            assertArrayEquals(bytes, Files.readAllBytes(plan));
        }
        Files.delete(plan);
        Files.createDirectory(plan);
        isRefused();
        Files.delete(plan);
        Files.createSymbolicLink(plan, folder.resolve("nowhere.yaml"));
        isRefused();
        assertTrue(Files.isSymbolicLink(plan));
    }

    private void isRefused() {
        for (String command : new String[] {"check", "pin", "notebook"}) {
            assertEquals(1, desktop.run(command, "projects/kissen"), desktop.out());
            assertEquals("", desktop.out());
            assertTrue(
                    desktop.err().startsWith("projects/kissen/plan.yaml:"),
                    command + desktop.err());
            assertTrue(desktop.err().endsWith("\n1 mistake\n"), command + desktop.err());
        }
    }

    /** A link to a plan in the folder is read; nothing is written through one. */
    @Test
    void aPlanThatIsALinkIsReadAndNotPinned() throws IOException {
        Path real = plan.resolveSibling("mine.yaml");
        Files.writeString(real, "units: cm\npieces: []\n");
        Files.createSymbolicLink(plan, real);
        assertEquals(0, desktop.run("check", "projects/kissen"), desktop.err());
        assertEquals(1, desktop.run("pin", "projects/kissen"));
        assertEquals(
                "projects/kissen/plan.yaml:1:1: mistake: found a link; right would be the plan itself,"
                        + " which is written here\n1 mistake\n",
                desktop.err());
        assertTrue(Files.isSymbolicLink(plan));
        assertEquals("units: cm\npieces: []\n", Files.readString(real));
    }

    @Test
    void whatIsNotLaidIsNotPinned() {
        desktop.with(
                "projects/kissen/project.yaml",
                PILLOW.replace("prewash: done", "prewash: unknown"));
        assertEquals(1, desktop.run("pin", "projects/kissen"));
        assertTrue(desktop.err().contains("nothing that is laid to its end"), desktop.err());
        assertFalse(Files.exists(plan));
        assertEquals(2, desktop.run("pin"));
        desktop.with("projects/other/project.yaml", PILLOW);
        assertEquals(2, desktop.run("pin", "projects"));
    }

    /** The plan is up to date once it is written: nothing is told to pin again. */
    @Test
    void whatIsToldIsTrueOfThePlanAsItIsWritten() {
        assertEquals(0, desktop.run("pin", "projects/kissen"));
        desktop.with(
                "projects/kissen/project.yaml",
                PILLOW.replace("rectangle: [40, 40]", "rectangle: [40, 60]"));
        assertEquals(0, desktop.run("check", "projects/kissen"));
        boolean isLetGo = desktop.err().contains("cannot stay there");
        assertEquals(0, desktop.run("pin", "projects/kissen"));
        assertTrue(isLetGo, "a front of 60 does not fit where one of 40 was");
        assertFalse(desktop.err().contains("cannot stay there"), desktop.err());
    }

    @Test
    void itsKeysAreInTheReference() {
        assertEquals(0, desktop.run("keys", "plan.yaml"));
        assertTrue(
                desktop.out().contains("Whether it is cut: a plan is ticked here."), desktop.out());
    }
}
