package secondbolt.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.project.Topics;
import secondbolt.project.Workshop;
import secondbolt.task.WorkStep;

/** Whole garments in the order a dressmaker sews them; common practice, no source. */
class SewingOrderTest {
    private static final String LINED =
            """
            pattern:
              rights: mine
              seam allowance: {of: 1.5, included: false}
              pieces:
                Vorderteil: {cut: {main: pair, lining: pair}, rectangle: [26, 50]}
                Rückenteil: {cut: {main: pair, lining: pair}, rectangle: [26, 50]}
                Tasche: {cut: {main: 2, lining: 2}, rectangle: [12, 14]}
                Kragen: {cut: {main: 2, interfacing: 1}, rectangle: [30, 6]}
              seams:
                - [Vorderteil.top, Rückenteil.top]
                - [Vorderteil.left, Rückenteil.left]
              meaning: {top: shoulder, left: side}
            """;

    private static List<WorkStep> steps(String... lines) {
        Mistakes mistakes = new Mistakes();
        String text = "title: Try\nunits: cm\nlay: {effort: quick}\n" + String.join("\n", lines);
        WorkResult result =
                new Workshop(Topics.all(LayDesk.inMemory()))
                        .work(SourceFile.of("project.yaml", text + "\n"), "try", mistakes)
                        .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()))
                        .came(WorkTopic.NAME)
                        .orElseThrow();
        return result.steps();
    }

    private static List<String> kept(List<WorkStep> steps, String... names) {
        return steps.stream().map(WorkStep::name).filter(List.of(names)::contains).toList();
    }

    private static String text(List<WorkStep> steps, String name) {
        return steps.stream()
                .filter(step -> step.name().equals(name))
                .map(WorkStep::text)
                .findFirst()
                .orElseThrow(() -> new AssertionError(name));
    }

    /** A lining cut by the pieces of the outside is a lining; that of a pocket is the pocket's. */
    @Test
    void sewsTheLiningThatIsCutByThePiecesOfTheOutside() {
        List<WorkStep> steps = steps("garment: coat", LINED);
        String[] order = {"shoulders", "side seams", "lining", "set in lining", "assemble"};
        assertEquals(List.of(order), kept(steps, order));
        assertTrue(text(steps, "lining").contains("Vorderteil, left to Rückenteil, left"));
        assertTrue(text(steps, "lining").endsWith("Pieces: Vorderteil, Rückenteil."));
        assertFalse(text(steps, "set in lining").contains("Tasche"));
    }

    /** The sides of a waistcoat are open while it is turned. */
    @Test
    void leavesTheSidesOfAWaistcoatOpenUntilItIsTurned() {
        List<WorkStep> steps = steps("garment: waistcoat", LINED);
        String[] order = {"shoulders", "lining", "set in lining", "turn", "side seams"};
        assertEquals(List.of(order), kept(steps, order));
        assertFalse(text(steps, "lining").contains("left"), text(steps, "lining"));
    }

    @Test
    void tellsOfTheLiningWhereNoKindIsTold() {
        String text = text(steps(LINED), "assemble");
        assertTrue(text.contains("the same in the lining"), text);
    }

    /** Fusible or sewn in, it goes on before anything is basted. */
    @Test
    void stiffensBeforeItIsBasted() {
        String[] fused = {"fuse", "baste", "fit on"};
        assertEquals(
                List.of(fused),
                kept(steps("garment: skirt", "interfacing: {kind: fusible}", LINED), fused));
        String[] sewnIn = {"baste interfacing", "baste", "fit on"};
        assertEquals(
                List.of(sewnIn),
                kept(steps("garment: coat", "interfacing: {kind: sewn-in}", LINED), sewnIn));
    }

    /** A waistband is known by its name; edges of legs that meet themselves are no band. */
    @Test
    void knowsAWaistbandByItsName() {
        List<WorkStep> steps =
                steps(
                        "garment: trousers",
                        "pattern:",
                        "  rights: mine",
                        "  seam allowance: {of: 1, included: false}",
                        "  pieces:",
                        "    Vorderhose: {cut: pair, rectangle: [30, 90]}",
                        "    Hinterhose: {cut: pair, rectangle: [30, 90]}",
                        "    Hosenbund: {cut: 1, rectangle: [120, 8]}",
                        "  seams:",
                        "    - [Vorderhose.left, Hinterhose.left]",
                        "    - [Vorderhose.right, Vorderhose.right]",
                        "    - [2 Vorderhose.top + 2 Hinterhose.top, Hosenbund.bottom]",
                        "  meaning: {left: side}",
                        "sewing: {finish: overlock, edges: together, frays: much}");
        String[] order = {"fit on", "neaten", "side seams"};
        assertEquals(List.of(order), kept(steps, order));
        assertTrue(text(steps, "neaten").contains("as soon as it is sewn"));
        assertTrue(text(steps, "band").contains("to Hosenbund, bottom"), text(steps, "band"));
        assertFalse(text(steps, "side seams").contains("itself"), text(steps, "side seams"));
        assertTrue(text(steps, "assemble").contains("Vorderhose, right to itself"));
    }

    /** What is left is told; where nothing is, that is said. */
    @Test
    void saysWhereNothingIsLeftToAssemble() {
        List<WorkStep> steps = steps("garment: coat", LINED);
        assertTrue(text(steps, "assemble").startsWith("Every seam that is written is sewn"));
    }

    /** A patch pocket is hemmed, then sewn on; a snap goes through a hemmed edge. */
    @Test
    void hemsWhatIsSewnOnAndWhatIsClosedThrough() {
        List<WorkStep> steps =
                steps(
                        "garment: bag",
                        "pattern:",
                        "  rights: mine",
                        "  seam allowance: {of: 1, included: false}",
                        "  pieces:",
                        "    Beutel: {cut: 2, rectangle: [40, 44]}",
                        "    Tasche: {cut: 1, rectangle: [16, 18]}",
                        "  seams: [[Beutel.left, Beutel.right]]",
                        "hems:",
                        "  mouth: {on: [Beutel.top], depth: 3, turned: twice}",
                        "  pocket: {on: [Tasche.top], depth: 2, turned: twice}",
                        "closures:",
                        "  mouth: {on: Beutel.top, snaps: 1, wide: 1.5, first: 20, laps: front over"
                                + " back, extension: 1.5, drawn to: finished edge}");
        String[] order = {"hem flat pieces", "pockets", "assemble", "hem", "snaps"};
        assertEquals(List.of(order), kept(steps, order));
    }

    /** An edge bound before it is level would be cut off again; elastic draws nothing forward. */
    @Test
    void bindsAHemWhenItIsLevelAndKeepsHerStepWithItsOwn() {
        List<WorkStep> steps =
                steps(
                        "garment: smock",
                        LINED,
                        "wearer: {age: adult, measurements: {wrist: 16}}",
                        "elastic: {cuff: {width: 6 mm, round: wrist, less: 1}}",
                        "hems: {hem: {on: [Vorderteil.bottom, Rückenteil.bottom], depth: 4, turned:"
                                + " blind, from floor: 40}}",
                        "binding: {edge: {on: [2 Vorderteil.bottom, 2 Rückenteil.bottom], kind: bound"
                                + " seam, seam: 1, from: bought}}",
                        "work: {own: [{name: monogram, after: pockets, do: Embroider it.}]}");
        List<String> names = steps.stream().map(WorkStep::name).toList();
        assertEquals(names.indexOf("pockets") + 1, names.indexOf("monogram"));
        String[] order = {"fit on", "elastic", "level", "bind seams", "hem"};
        assertEquals(List.of(order), kept(steps, order));
    }
}
