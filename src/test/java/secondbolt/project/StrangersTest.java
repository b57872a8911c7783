package secondbolt.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.worksheet.Finding;

/**
 * Whole projects of kinds that no demo is of, held against sums done by hand: each lies beside its
 * project as {@code NAME.sums}, the sum after the figure.
 */
class StrangersTest {
    private static final String FOLDER = "/examples/strangers/";

    private static String text(String file) {
        try (var in = StrangersTest.class.getResourceAsStream(FOLDER + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError(file, e);
        }
    }

    private static Workings workings(String name, String text) {
        Mistakes mistakes = new Mistakes();
        Workings workings =
                WrittenProject.read(SourceFile.of(name + ".yaml", text), mistakes)
                        .orElseThrow(() -> new AssertionError(mistakes.inOrder().toString()))
                        .workings(name);
        assertTrue(mistakes.isEmpty(), mistakes.inOrder().toString());
        return workings;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "shorts-by-tape",
                "hooded-cape",
                "tiered-skirt",
                "godet-skirt",
                "jersey-top",
                "quilted-coat",
                "half-lined-jacket",
                "wrap-skirt",
                "pinafore",
                "cuffed-trousers"
            })
    void comeToWhatTheyCameToByHand(String name) {
        HandSums sums = new HandSums(workings(name, text(name + ".yaml")));
        List<String> wrong = new ArrayList<>();
        int held = 0;
        for (String line : text(name + ".sums").split("\n", -1)) {
            String sum = line.replaceFirst("\\s*#.*", "").strip();
            if (!sum.isEmpty()) {
                sums.wrong(sum).ifPresent(wrong::add);
                held++;
            }
        }
        assertEquals("", String.join("\n", wrong));
        assertTrue(held >= 16, name + " holds " + held);
    }

    /** Half an inch more leg on a cuff that stays; each of the ways out she is told is one. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "widen: [side, left]|widen: side",
                "{join: [front.hem + back.hem, cuff.top], ease: 1/2}|"
                        + "[front.hem + back.hem, cuff.top]"
            })
    void aCuffLeftBehindIsPutRightAsTold(String remedy) {
        String[] instead = remedy.split("\\|", -1);
        String text = text("cuffed-trousers.yaml");
        assertTrue(text.contains(instead[1]));
        Workings mended = workings("trousers", text.replace(instead[1], instead[0]));
        assertEquals(List.of(), mended.stops().stream().map(Finding::text).toList());
    }

    /** The band lacks 5.8 of room along the cloth: of two parts of 59 with a seam both find it. */
    @Test
    void aBandThatFindsNoRoomIsLaidInTwoPartsAsTold() {
        String text =
                text("shorts-by-tape.yaml")
                        .replace(
                                "Bund: {cut: 1, box: [112, 8], edges: {Naht: 112}}",
                                "Bund: {cut: 2, box: [56, 8], edges: {Naht: 56}}")
                        .replace("Bund.Naht]", "2 Bund.Naht]");
        Workings mended = workings("shorts", text);
        assertEquals(List.of(), mended.stops().stream().map(Finding::text).toList());
    }
}
