package secondbolt.hostile;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Large files of many kinds: each comes to an end and is told. */
class LargeFilesTest {
    private static final int LETTERS = 300_000;

    private static final String BAG =
            """
            title: Bag
            units: cm
            cloth: {sheet: {size: [150, 90], prewash: done, flaws: none}}
            pattern:
              rights: mine
              seam allowance: {of: 1, included: false}
              pieces:
                bag: {cut: 1, rectangle: [30, 40]}
            """;

    @TempDir Path temporary;
    private StrangersDesk desk;

    @BeforeEach
    void layOut() {
        desk = new StrangersDesk(temporary, SoundProject.BAND);
    }

    /** The part between braces as often as there is room for. */
    private static String large(String kind) {
        int open = kind.indexOf('{');
        int close = kind.lastIndexOf('}');
        String again = kind.substring(open + 1, close).replace("\\n", "\n");
        return kind.substring(0, open).replace("\\n", "\n")
                + again.repeat(LETTERS / again.length())
                + kind.substring(close + 1).replace("\\n", "\n");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "title: {x} | text of 300000 letters",
                "title: \"{\\u200d}\" | text of",
                "summary: >\\n{  word\\n} | text of"
            })
    void aProjectIsTold(String kind, String told) {
        desk.receives("projects/large/project.yaml", large(kind));
        desk.isRefused(told, "check", "projects/large");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "plan.yaml | {- piece: bag\\n} | plan.yaml:1:1: mistake: found a list",
                "plan.yaml | pieces:\\n{  - piece: bag\\n} | mistake: found",
                "plan.yaml | units: cm\\npieces:\\n{  - {piece: bag, cloth: sheet, at: [1, 1]}\\n} |"
                        + " mistake: found",
                "../../local.yaml | {paper: a4\\n} | local.yaml:2:1: mistake: found `paper` a second",
                "../../local.yaml | paper: {a4} | local.yaml:1:8: mistake: found"
            })
    void aFileBesideIsTold(String path, String kind, String told) {
        desk.receives("projects/large/project.yaml", BAG);
        desk.receives(Path.of("projects/large").resolve(path).normalize().toString(), large(kind));
        desk.isRefused(told, "check", "projects/large");
        desk.isRefused(told, "notebook");
    }
}
