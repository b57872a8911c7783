package secondbolt.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.project.WrittenProject;

/**
 * Where an answer is lacking or is none, all that may be answered is told: none is urged on her.
 */
class AllAnswersTest {
    private static List<String> rights(String... lines) {
        Mistakes mistakes = new Mistakes();
        String text = "title: Test\n" + String.join("\n", lines) + "\n";
        WrittenProject.read(SourceFile.of("project.yaml", text), mistakes);
        return mistakes.inOrder().stream().map(m -> m.right()).toList();
    }

    private static void only(String right, List<String> told) {
        assertEquals(1, told.size(), told.toString());
        assertTrue(told.get(0).contains(right), told.toString());
    }

    @Test
    void asksWhetherAllowancesAreIncluded() {
        only(
                "`included: false`, one of `true`, `false`, `yes`, `no`",
                rights(
                        "units: cm",
                        "pattern:",
                        "  seam allowance: {of: 1.5}",
                        "  pieces: {front: {cut: 1, rectangle: [30, 60]}}"));
    }

    @Test
    void asksTheUnits() {
        only("one of `cm`, `in`", rights("cloth: {sheet: {size: [150, 240]}}"));
    }

    /** Shrunk by so much is no answer; the marked square is shown beside the words. */
    @Test
    void showsTheMarkedSquareToWhoeverTellsAPercentage() {
        only(
                "`prewash: {marked: [50, 50], now: [49.2, 48.0]}` with your own values",
                rights("units: cm", "cloth: {sheet: {size: [150, 240], prewash: 3 %}}"));
        only(
                "`never`, one of `done`",
                rights("units: cm", "cloth: {sheet: {size: [150, 240], prewash: nevr}}"));
    }
}
