package secondbolt.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.lay.kept.LayDesk;
import secondbolt.project.Topics;
import secondbolt.project.Workings;
import secondbolt.project.Workshop;

/** What the garment measures stands in the figures, and is told when it moves. */
class FinishedFiguresTest {
    private static final String SKIRT =
            """
            title: Skirt
            units: cm
            pattern:
              pieces:
                front: {cut: 1, fold: left, outline: [{start: [0, 0]}, {edge: waist, to: [18, 0]}, {edge: side, to: [18, 20]}, {edge: side below, to: [18, 60]}, {edge: hem, to: [0, 60]}, {edge: left, to: start}]}
                back: {cut: 1, fold: left, outline: [{start: [0, 0]}, {edge: waist, to: [20, 0]}, {edge: side, to: [20, 20]}, {edge: side below, to: [20, 60]}, {edge: hem, to: [0, 60]}, {edge: left, to: start}]}
              seams: [[front.side, back.side], [front.side below, back.side below]]
            alterations: [{widen: [side, side below], by: 4}]
            """;

    private static String figures(String text) {
        Mistakes mistakes = new Mistakes();
        Workings workings =
                new Workshop(Topics.all(LayDesk.inMemory()))
                        .work(SourceFile.of("p.yaml", text), "skirt", mistakes)
                        .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()));
        return SampleSite.text(SampleSite.site(workings), "skirt/workings.json");
    }

    /** 2 x 18 and 2 x 20 are 76 round; 4 wider, 80. */
    @Test
    void theyAreInMillimetresAsDrawnAndAsAltered() {
        String flat = figures(SKIRT).replaceAll("\\s+", " ");
        String hem =
                "{\"what\": \"round the hem of front, back\", \"measures\": \"\", \"drawn_mm\": 760,"
                        + " \"altered_mm\": 800}";
        assertTrue(flat.replace("{ ", "{").replace(" }", "}").contains(hem), flat);
        assertTrue(
                flat.contains(
                        "\"what\": \"round the waist of front, back\", \"measures\": \"waist\""),
                flat);
    }

    /** 6 wider, 82. */
    @Test
    void anotherAmountIsToldAmongWhatChanged() {
        List<String> lines =
                Changes.between(
                        Optional.of(figures(SKIRT)), figures(SKIRT.replace("by: 4", "by: 6")));
        assertTrue(
                lines.contains(
                        "fit › finished › round the hem of front, back › altered: 80 cm -> 82 cm"),
                "" + lines);
        assertTrue(
                lines.contains(
                        "fit › finished › round the waist of front, back › altered: 80 cm -> 82 cm"),
                "" + lines);
        assertEquals(List.of(), lines.stream().filter(line -> line.contains("› drawn:")).toList());
    }
}
