package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.tools.Tools;

/** Holds the notebook of the demo projects: as committed, and the same twice. */
class SiteTest {
    @TempDir Path folder;

    @Test
    void isCommittedAsAFreshRunMakesIt() throws IOException {
        SiteFiles.assertCommitted(DemoSite.folder());
    }

    @Test
    void isTheSameInWhateverOrderTheProjectsWereMade() throws IOException {
        String other = Desktop.APRON.replace("Apron", "Bib");
        Path one = folder.resolve("one");
        new Desktop(one)
                .with("projects/apron/project.yaml", Desktop.APRON)
                .with("projects/bib/project.yaml", other)
                .run();
        Path two = folder.resolve("two");
        new Desktop(two)
                .with("projects/bib/project.yaml", other)
                .with("projects/apron/project.yaml", Desktop.APRON)
                .run();
        Map<String, byte[]> first = SiteFiles.of(one.resolve("site"));
        Map<String, byte[]> second = SiteFiles.of(two.resolve("site"));
        assertEquals(first.keySet(), second.keySet());
        first.forEach((path, bytes) -> assertTrue(Arrays.equals(bytes, second.get(path)), path));
    }

    @Test
    void writesNothingASecondTime() {
        Desktop desktop = new Desktop(folder).with("projects/apron/project.yaml", Desktop.APRON);
        desktop.run();
        assertEquals(Secondbolt.DONE, desktop.run());
        assertTrue(desktop.out().contains(" 0 files written"), desktop.out());
    }

    @Test
    void tellsWhichPrintedSheetsAreStaleAfterAChange() {
        Desktop desktop = new Desktop(folder).with("projects/apron/project.yaml", Desktop.APRON);
        desktop.run();
        desktop.with("projects/apron/project.yaml", Desktop.APRON.replace("last: 8", "last: 9"));
        desktop.run();
        assertTrue(desktop.out().contains("are stale"), desktop.out());
        assertTrue(desktop.out().contains("from top: 32 cm -> 31 cm"), desktop.out());
        assertTrue(!desktop.out().contains("apron: cloth"), desktop.out());
    }

    /**
     * One number: the pieces that carry the line, what lies along them, and where they are cut; no
     * other paper.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    lengthen: sleeve, by: 2.5|lengthen: sleeve, by: 3|\
                    piece-sleeve all-pieces cutting-plan-left-curtain yardage-summary seam-card \
                    shopping-list
                    lengthen: body, by: 1.5|lengthen: body, by: 2|\
                    front-band piece-front piece-back piece-front-band all-pieces \
                    cutting-plan-left-curtain yardage-summary order-of-work seam-card shopping-list trim
                    """)
    void changesExactlyTheSheetsThatALengtheningTouches(String was, String is, String sheets)
            throws IOException {
        String shirt = Files.readString(Path.of("projects/porch-shirt/project.yaml"));
        assertTrue(shirt.contains(was));
        Desktop desktop = new Desktop(folder).with("projects/shirt/project.yaml", shirt);
        assertEquals(Secondbolt.DONE, desktop.run("notebook", "--quiet"), desktop.err());
        Map<String, byte[]> before = SiteFiles.of(folder.resolve("site"));
        desktop.with("projects/shirt/project.yaml", shirt.replace(was, is));
        assertEquals(Secondbolt.DONE, desktop.run("notebook"), desktop.err());
        Map<String, byte[]> after = SiteFiles.of(folder.resolve("site"));
        TreeSet<String> changed = new TreeSet<>();
        after.forEach(
                (path, bytes) -> {
                    if (path.endsWith(".pdf") && !Arrays.equals(bytes, before.get(path))) {
                        changed.add(path.replaceAll("^shirt/|[.]pdf$", ""));
                    }
                });
        assertEquals(new TreeSet<>(List.of(sheets.split(" "))), changed);
        TreeSet<String> told = new TreeSet<>();
        Matcher stale = Pattern.compile("sheet (\\S+): code .* are stale").matcher(desktop.out());
        while (stale.find()) {
            told.add(stale.group(1));
        }
        assertEquals(changed, told, desktop.out());
    }

    @Test
    void makesFilesThatAnotherReaderFindsSound() throws IOException {
        String qpdf = Tools.require("qpdf").toString();
        Path site = DemoSite.folder();
        int checked = 0;
        for (String path : SiteFiles.of(site).keySet()) {
            if (path.endsWith(".pdf")) {
                String told = Tools.run(site, qpdf, "--check", path);
                assertTrue(told.contains("No syntax or stream encoding errors"), told);
                checked++;
            }
        }
        assertTrue(checked >= 2);
    }
}
