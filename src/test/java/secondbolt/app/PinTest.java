package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
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

    @Test
    void itsKeysAreInTheReference() {
        assertEquals(0, desktop.run("keys", "plan.yaml"));
        assertTrue(
                desktop.out().contains("Whether it is cut: a plan is ticked here."), desktop.out());
    }
}
