package secondbolt.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.worksheet.Finding;

/** Pieces that no cloth can be cut to are told at their place, and all others come to sheets. */
class OddShapesTest {
    private static final String PANEL =
            """
            title: Apron
            units: cm
            cloth: {sheet: {size: [150, 240], prewash: done, trim: none}}
            pattern:
              rights: mine
              seam allowance: {of: 1, included: false}
              pieces:
                panel:
                  cut: 1
                  outline:
                    - {start: [0, 0]}
                    - {edge: top, to: [20, 0]}
                    - {edge: side, to: [24, 50]}
                    - {edge: hem, to: [0, 50]}
                    - {edge: centre, to: start}
            """;

    private static Optional<Workings> work(String text, Mistakes mistakes) {
        LayDesk memory = LayDesk.inMemory();
        LayDesk brief = new LayDesk(memory.store(), 1, (share, bestMm) -> false);
        return new Workshop(Topics.all(brief))
                .work(SourceFile.of("project.yaml", text), "apron", mistakes);
    }

    private static Workings sound(String text) {
        Mistakes mistakes = new Mistakes();
        Workings workings =
                work(text, mistakes)
                        .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
        assertTrue(workings.worksheets().stream().mapToInt(s -> s.blocks().size()).sum() > 0);
        assertTrue(workings.sheets().size() > 1);
        return workings;
    }

    private static Mistake mistake(String text) {
        Mistakes mistakes = new Mistakes();
        work(text, mistakes);
        List<Mistake> told = mistakes.inOrder();
        assertEquals(1, told.size(), told.toString());
        return told.get(0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // A point typed twice, and one that is nearly the one before.
                "to: [24, 50]}|to: [20, 0]}|13|the edge `side`, which ends where it begins",
                "to: [24, 50]}|to: [20.005, 0]}|13|the edge `side`, which ends where it begins",
                "to: [24, 50]}|to: [24, 50], through: [[20, 0]]}|13|same point twice in a row",
                "to: [24, 50]}|to: [24, 50], through: [[23, 20], [23, 20]]}|13|same point twice",
                "to: [24, 50]}|to: [24, 50], through: [[23, 20], [24, 50]]}|13|same point twice",
            })
    void tellsPointsThatMeet(String sound, String odd, int line, String words) {
        Mistake told = mistake(PANEL.replace(sound, odd));
        assertEquals(line, told.place().line(), told.toString());
        assertTrue(told.found().contains(words), told.toString());
    }

    @Test
    void tellsWhatReachesPastTheFold() {
        String folded = PANEL.replace("cut: 1", "cut: 1\n      fold: centre");
        sound(folded);
        Mistake past = mistake(folded.replace("to: [20, 0]", "to: [20, 0], through: [[-2, -6]]"));
        assertEquals("a piece that reaches past its fold near", past.found().split(" \\[", 2)[0]);
        assertEquals(10, past.place().line());
        Mistake bent =
                mistake(
                        folded.replace(
                                "centre, to: start", "centre, to: start, through: [[1, 25]]"));
        assertEquals("the edge `centre` on the fold, which is bent", bent.found());
    }

    /**
     * By hand: the lower end leans by 5 to 1 towards the fold and is 1 cm wide, so that 2 cm of
     * allowance meet that of the hem 0.85 cm past the fold, in the other half; 2 to 4 stays clear.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"[1, 50] | [0, 45] | true", "[4, 50] | [0, 48] | false"})
    void doesNotLayWhatIsCutPastTheFold(String from, String to, boolean isPast) {
        String leaning =
                PANEL.replace("cut: 1", "cut: 1\n      fold: centre\n      allowance: {end: 2}")
                        .replace(
                                "to: [0, 50]}",
                                "to: %s}\n        - {edge: end, to: %s}".formatted(from, to));
        List<Finding> stops = sound(leaning).stops();
        List<String> told = List.of("cutting-line-crosses", "lay-piece-crosses-itself");
        assertEquals(isPast ? told : List.of(), stops.stream().map(Finding::code).toList());
        assertTrue(stops.stream().limit(1).allMatch(s -> s.text().contains("past the fold near")));
    }

    /**
     * An edge moved along its straight neighbours takes both with it, whichever way it is drawn.
     */
    @ParameterizedTest
    @CsvSource({"widen, top", "narrow, top", "widen, bottom", "narrow, bottom", "widen, left"})
    void movesAnyEdgeOfARectangle(String how, String edge) {
        sound(
                """
                title: Pocket
                units: cm
                pattern:
                  rights: mine
                  seam allowance: {of: 1, included: false}
                  pieces:
                    pocket: {cut: 2, rectangle: [18, 20]}
                alterations:
                  - {%s: %s, by: 0.8}
                """
                        .formatted(how, edge));
    }

    /**
     * A piece of no cloth lies in no ring round the body, and has no words for what it is cut of.
     */
    @ParameterizedTest
    @ValueSource(strings = {"{}", "{main: none}", "{main: none, lining: none}"})
    void tellsAPieceOfNoCloth(String cut) {
        Mistake told = mistake(PANEL.replace("cut: 1", "cut: " + cut));
        assertEquals("a piece that is cut of no cloth", told.found());
        assertEquals(9, told.place().line());
    }

    /**
     * By hand: a cutting line whose side runs out by 300 on 50 cm goes on so past the fold 4 cm
     * above its edge. That is 320 − 24 cm long less 1 cm of allowance at the centre and 6.08 along
     * the slanting side, 288.9; the edge grows by 6 for each depth and its line shrinks by as much.
     * 5 % of fullness come to 0.05 × 288.9 / (6 × 2.05) = 1.17 cm of depth, though the fold does
     * not turn at all.
     */
    @Test
    void tellsHowDeepAHemMayBeThatFlaresAtItsEndAlone() {
        String flaring =
                PANEL.replace("to: [24, 50]", "to: [320, 50]")
                                .replace("included: false", "included: true")
                        + "hems: {lower: {on: [panel.hem], depth: 4, turned: once}}\n";
        List<Finding> full =
                sound(flaring).findings().stream()
                        .filter(finding -> finding.code().equals("hem-too-full"))
                        .toList();
        assertEquals(1, full.size());
        String remedy = full.get(0).remedy();
        assertTrue(remedy.startsWith("Up to 1.15 cm deep it can be eased in"), remedy);
    }

    /** Where the outline is the cutting line and a hem takes the whole front, nothing is sewn. */
    @Test
    void measuresAnEdgeOfWhichNothingIsLeftToSew() throws IOException {
        String coat;
        try (var in = getClass().getResourceAsStream("/examples/strangers/quilted-coat.yaml")) {
            coat = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        String deep = "hems: {x: {on: [forstykke.midt foran], depth: 30 cm, turned: narrow}}\n";
        sound(coat + "\n" + deep);
    }
}
