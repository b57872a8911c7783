package secondbolt.closure.row;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.block.Block;
import secondbolt.file.Fields;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.project.Topics;
import secondbolt.project.WrittenProject;
import secondbolt.topic.Engine;
import secondbolt.topic.Topic;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Worksheet;

/** What alterations move on a placket, worked by hand on a rectangle of 60 cm. */
class PlacketChangeTest {
    private static WrittenProject project(
            String shape, String edge, String closure, String alterations) {
        Mistakes mistakes = new Mistakes();
        return WrittenProject.read(
                        SourceFile.of(
                                "test.yaml",
                                """
                                title: Shirt
                                units: cm
                                pattern:
                                  rights: mine
                                  pieces: {front: {cut: pair, %s, lines: {body: 30}}}
                                closures:
                                  band: {on: front.%s, extension: 2, laps: left over right,
                                    button: {across: 15 mm, thick: 3 mm}, holes: upright, %s}
                                %s
                                """
                                        .formatted(shape, edge, closure, alterations)),
                        mistakes)
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
    }

    private static Worksheet worksheet(WrittenProject project) {
        return project.workings("shirt").worksheets().stream()
                .filter(w -> w.name().equals("closures"))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> altered(String closure, String alterations) {
        return worksheet(project("rectangle: [30, 60]", "left", closure, alterations))
                .findings()
                .stream()
                .filter(f -> f.code().equals("placket-altered"))
                .map(Finding::text)
                .toList();
    }

    /** Derived: five from 2 to 50 cm, every 12 cm; 4 cm more make it 13, so all but one move. */
    @Test
    void tellsWhichFastenersMoved() {
        assertEquals(
                List.of(
                        "The alterations take the placket from 60 cm to 64 cm; buttons 2 to 5"
                                + " moved."),
                altered(
                        "buttons: 5, first: 2, last: 10",
                        "alterations: [{lengthen: body, by: 4}]"));
    }

    @Test
    void tellsNothingWithoutAlterationsOrWhereTheyAddUpToNothing() {
        assertEquals(List.of(), altered("buttons: 5, first: 2, last: 10", ""));
        assertEquals(
                List.of(),
                altered(
                        "buttons: 5, first: 2, last: 10",
                        "alterations: [{lengthen: body, by: 4}, {shorten: body, by: 4}]"));
    }

    /** Without the alteration the last of two would lie above the first. */
    @Test
    void tellsOfNoMovesWhereTheClosureNeedsTheAlterations() {
        assertEquals(
                List.of(
                        "The alterations take the placket from 60 cm to 64 cm; without them its buttons do not fit."),
                altered(
                        "buttons: 2, first: 2, last: 59",
                        "alterations: [{lengthen: body, by: 4}]"));
    }

    /** As written, and once without the alterations: for what moved and for what follows. */
    @Test
    void isWorkedOutWithoutTheAlterationsOnce() {
        List<Topic<?>> topics = Topics.all(LayDesk.inMemory());
        Engine engine = new Engine(topics);
        Fields sections =
                project(
                                "rectangle: [30, 60]",
                                "left",
                                "buttons: 5, first: 2, last: 10",
                                "alterations: [{lengthen: body, by: 4}]")
                        .project()
                        .sections();
        engine.run(sections);
        assertEquals(2, engine.timesWorked("closures"));
    }

    @Test
    void warnsOnTheStripOfAnEdgeThatMayHaveChanged() {
        Worksheet sheet =
                worksheet(
                        project(
                                "box: [30, 60], edges: {band: 60}",
                                "band",
                                "buttons: 5, first: 2, last: 10",
                                "alterations: [{lengthen: body, by: 4}]"));
        assertTrue(
                sheet.findings().stream().anyMatch(f -> f.code().equals("placket-edge-open")),
                sheet.findings().toString());
        String strip = sheet.sheets().get(0).blocks().get(1).toString();
        assertTrue(strip.contains("hold for the length as taped only"), strip);
        assertTrue(sheet.sheets().get(0).blocks().get(1) instanceof Block.Warnings);
    }
}
