package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import secondbolt.tools.Tools;

/** The cutting plans and the yardage summaries as they are printed. */
class CuttingPlanPrintTest {
    @TempDir Path folder;

    private static Map<?, ?> workings(Path site) throws IOException {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(50_000_000);
        return new Yaml(new SafeConstructor(options))
                .load(Files.readString(site.resolve("workings.json")));
    }

    private String words(Path pdf) throws IOException {
        Path text = folder.resolve("words.txt").toAbsolutePath();
        Tools.run(
                folder,
                Tools.require("pdftotext").toString(),
                "-layout",
                pdf.toAbsolutePath().toString(),
                text.toString());
        return Files.readString(text).replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "blanket-waistcoat",
                "duvet-smock",
                "gore-skirt",
                "porch-shirt",
                "check-apron"
            })
    void aPlanIsOnePageWithEveryPieceOnItsList(String project) throws IOException {
        Path site = Path.of("site", project);
        Map<?, ?> workings = workings(site);
        for (Object each : (List<?>) workings.get("sheets")) {
            Map<?, ?> sheet = (Map<?, ?>) each;
            String name = (String) sheet.get("name");
            if (name.startsWith("cutting-plan") || name.equals("yardage-summary")) {
                assertEquals(1, sheet.get("pages"), name);
            }
        }
        Map<?, ?> lay = (Map<?, ?>) workings.get("lay");
        Map<?, ?> made = (Map<?, ?>) lay.values().iterator().next();
        for (Object each : (List<?>) made.get("placed")) {
            Map<?, ?> placed = (Map<?, ?>) each;
            String cloth = ((String) placed.get("cloth")).replace(' ', '-');
            String words = words(site.resolve("cutting-plan-" + cloth + ".pdf"));
            assertTrue(words.contains((String) placed.get("piece")), words);
        }
    }
}
