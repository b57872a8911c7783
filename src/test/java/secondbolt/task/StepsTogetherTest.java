package secondbolt.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.project.Workings;
import secondbolt.project.WrittenProject;
import secondbolt.work.WorkTopic;

/** The steps of all topics together, which must never follow each other in a circle. */
class StepsTogetherTest {
    private static final String SKIRT =
            """
            cloth:
              sheet: {size: [240, 260], fibre: cotton, known by: label, mass: 900 g, prewash: done}
            pattern:
              seam allowance: {of: 1, included: false}
              pieces:
                skirt: {cut: 2, rectangle: [100, 60]}
                band: {cut: {main: 1, interfacing: 1}, rectangle: [80, 8]}
              seams:
                - {join: [2 skirt.top, band.bottom], gather: 2.5}
                - [skirt.right, skirt.left]
            hems:
              lower: {on: [skirt.bottom], depth: 4, turned: twice}
            closures:
              side: {length: 18, buttons: 3, first: 2, last: 2, extension: 2, holes: level,
                laps: front over back, worn: side, button: {across: 15 mm, thick: 3 mm}}
            alterations: [{lengthen: drop, by: 2}]
            """
                    .replace("[100, 60]}", "[100, 60], lines: {drop: 30}}");

    private static Workings work(String text) {
        Mistakes mistakes = new Mistakes();
        return WrittenProject.read(
                        SourceFile.of("project.yaml", "title: Skirt\nunits: cm\n" + text), mistakes)
                .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()))
                .workings("skirt");
    }

    private static List<String> circles(String text) {
        return work(text).findings().stream()
                .filter(finding -> finding.code().equals("work-circle"))
                .map(finding -> finding.text())
                .toList();
    }

    @Test
    void makeNoCircleWhenTheClothIsDyedBeforeItIsCut() {
        String dye =
                "dye: {cloth: [sheet], colour: slate, class: direct, depth: medium, packet: {dyes:"
                        + " 500 g}, vessel: 20 l, when: before cutting}\n";
        assertEquals(List.of(), circles(SKIRT + dye));
    }

    @ParameterizedTest
    @CsvSource({"skirt", "apron", "shirt", "dress", "trousers", "waistcoat", "smock", "bag"})
    void makeNoCircleOfAnyKind(String kind) {
        assertEquals(List.of(), circles(SKIRT + "garment: " + kind + "\n"));
        String round = SKIRT.replace("turned: twice}", "turned: twice, hang: yes, from floor: 40}");
        assertEquals(List.of(), circles(round + "garment: " + kind + "\n"));
    }

    @ParameterizedTest
    @CsvSource({"twice,true", "'twice, for: skirt',false"})
    void hemsAStraightEdgeBeforeItIsGathered(String turned, boolean isBefore) {
        List<String> names =
                work(SKIRT.replace("turned: twice", "turned: " + turned) + "garment: apron\n")
                        .came(WorkTopic.NAME)
                        .orElseThrow()
                        .steps()
                        .stream()
                        .map(WorkStep::name)
                        .toList();
        assertTrue(names.contains("gather"), names.toString());
        assertEquals(isBefore, names.indexOf("hem") < names.indexOf("gather"), names.toString());
    }
}
