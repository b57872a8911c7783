package secondbolt.project;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;

/** What a change of a project file has worked out anew. */
class WorkshopTest {
    private static final List<String> TOPICS =
            List.of("wearer", "cloth", "fit", "closures", "hems", "cutting", "lay", "effects");

    private static final String SMOCK =
            """
            title: Smock
            units: cm
            cloth: {sheet: {size: [150, 240], prewash: done}}
            pattern:
              rights: mine
              seam allowance: {of: 1, included: false}
              pieces:
                front: {cut: pair, rectangle: [30, 84], lines: {body: 40}}
                back: {cut: 1, fold: left, rectangle: [28, 84], lines: {body: 40}}
            closures:
              band: {on: front.left, extension: 2, buttons: 7, first: 2, last: 10,
                button: {across: 15 mm, thick: 3 mm}, holes: upright, laps: right over left}
            hems:
              lower: {on: [front.bottom, back.bottom], depth: 2, turned: once}
            alterations:
              - {lengthen: body, by: 2}
              - {widen: right, by: 2}
            """;

    private final Workshop workshop = new Workshop(Topics.all(LayDesk.inMemory()));

    private Workings work(String text) {
        Mistakes mistakes = new Mistakes();
        return workshop.work(SourceFile.of("project.yaml", text), "smock", mistakes)
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
    }

    private List<String> worked() {
        return TOPICS.stream().filter(topic -> workshop.timesWorked(topic) > 0).toList();
    }

    /**
     * As written, without alterations and with the first alone: three different patterns, so each
     * topic that reads them is worked out three times, and no other more than once.
     */
    @Test
    void worksNothingOutTwice() {
        work(SMOCK);
        assertEquals(TOPICS, worked());
        for (String once : List.of("wearer", "cloth", "lay", "effects")) {
            assertEquals(1, workshop.timesWorked(once), once);
        }
        for (String thrice : List.of("fit", "closures", "hems", "cutting")) {
            assertEquals(3, workshop.timesWorked(thrice), thrice);
        }
    }

    @Test
    void worksNothingOutForAnotherTitleOrALineMoreAbove() {
        Workings before = work(SMOCK);
        Workings after = work("# for Sunday\n" + SMOCK.replace("title: Smock", "title: Kittel"));
        assertEquals(List.of(), worked());
        assertEquals(before.worksheets(), after.worksheets());
    }

    @Test
    void worksOutTheClosuresAndWhatReadsThemForAnotherCountOfButtons() {
        work(SMOCK);
        work(SMOCK.replace("buttons: 7", "buttons: 8"));
        assertEquals(List.of("closures", "effects"), worked());
    }

    @Test
    void worksOutNeitherPiecesNorClosuresForAnotherFlaw() {
        work(SMOCK);
        work(
                SMOCK.replace(
                        "prewash: done",
                        "prewash: done, flaws: [{what: hole, at: [20, 20], round: 2}]"));
        assertEquals(List.of("cloth", "hems", "lay"), worked(), "hems ask what the cloth is");
    }

    /** What asks for a topic under a supposition is held against that very topic anew. */
    @Test
    void worksOutWhoWearsItWhenThatIsToldLater() {
        work(SMOCK);
        work(SMOCK + "wearer: {age: adult}\n");
        work(SMOCK + "wearer: {age: 4, measurements: {bust: 58}}\n");
        work(SMOCK);
    }
}
