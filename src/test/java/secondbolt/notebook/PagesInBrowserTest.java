package secondbolt.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import secondbolt.notebook.site.SiteFile;
import secondbolt.notebook.site.SiteWriter;
import secondbolt.project.Workings;
import secondbolt.tools.Tools;
import secondbolt.worksheet.Finding.Level;

/** Pages are valid HTML, fit a phone and can be read without colour. */
class PagesInBrowserTest {
    private static final int PHONE_PX = 320;

    @TempDir Path folder;

    private static List<SiteFile> site() {
        Workings calm = SampleSite.project("calm", "Porch shirt", 650, List.of());
        Workings loud =
                SampleSite.project(
                        "loud",
                        "Donaudampfschifffahrtsgesellschaftskapitänsjacke",
                        650,
                        SampleSite.findings(Level.values()));
        return SampleSite.site(calm, loud);
    }

    private List<Path> pages() throws IOException {
        SiteWriter.write(folder, site());
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".html")).sorted().toList();
        }
    }

    /** Source: the Nu Html Checker of the W3C, which knows the living standard of HTML. */
    @Test
    void areValidHtml() throws IOException {
        Path checker = Tools.requireFile(".tools/node_modules/vnu-jar/build/dist/vnu.jar");
        List<String> command =
                new ArrayList<>(
                        List.of(
                                "java",
                                "-jar",
                                checker.toString(),
                                "--errors-only",
                                "--also-check-css"));
        pages().forEach(page -> command.add(page.toString()));
        command.add(folder.resolve("look/style.css").toString());
        assertEquals("", Tools.run(folder, command.toArray(new String[0])));
    }

    /** Source: WCAG 2.2, success criterion 1.4.10: 320 px wide without scrolling sideways. */
    @Test
    void fitASmallPhone() throws IOException {
        Path browser = Tools.require("chromium");
        List<Path> pages = pages();
        List<Path> probes = new ArrayList<>();
        for (Path page : pages) {
            Path probe = page.resolveSibling("probe-of-" + page.getFileName());
            String script =
                    "<script>document.title='wide '+document.documentElement.scrollWidth</script>";
            Files.writeString(probe, Files.readString(page).replace("</body>", script + "</body>"));
            probes.add(probe);
        }
        List<Integer> widths = widths(browser, probes);
        for (int i = 0; i < pages.size(); i++) {
            assertEquals(PHONE_PX, widths.get(i), pages.get(i).toString());
        }
    }

    /**
     * A window has a least width, so each page is shown in a frame that is as narrow as a phone.
     */
    private List<Integer> widths(Path browser, List<Path> pages) throws IOException {
        StringBuilder frames = new StringBuilder("<!DOCTYPE html><title>-</title>");
        for (Path page : pages) {
            frames.append("<iframe width=\"")
                    .append(PHONE_PX)
                    .append("\" height=\"700\" style=\"border:0\" src=\"")
                    .append(page.toUri())
                    .append("\" onload=\"this.title=this.contentDocument.title\"></iframe>");
        }
        Path outer = Files.writeString(folder.resolve("frames.html"), frames);
        String dom =
                Tools.run(
                        folder,
                        browser.toString(),
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--hide-scrollbars",
                        "--allow-file-access-from-files",
                        "--user-data-dir=" + folder.resolve("profile"),
                        "--virtual-time-budget=5000",
                        "--dump-dom",
                        outer.toUri().toString());
        List<Integer> widths = new ArrayList<>();
        Matcher wide = Pattern.compile(" title=\"wide (\\d+)\"").matcher(dom);
        while (wide.find()) {
            widths.add(Integer.parseInt(wide.group(1)));
        }
        assertEquals(pages.size(), widths.size(), dom);
        return widths;
    }

    /** Source: WCAG 2.2, success criterion 1.4.3: text at 4.5 to 1 at least. */
    @Test
    void standOutFromTheirPaper() {
        String style = SampleSite.text(site(), "look/style.css");
        for (String ink : List.of("ink", "soft", "indigo")) {
            for (String paper : List.of("paper", "white")) {
                double ratio = contrast(colour(style, ink), colour(style, paper));
                assertTrue(ratio >= 4.5, ink + " on " + paper + " is " + ratio);
            }
        }
    }

    private static String colour(String style, String name) {
        Matcher colour = Pattern.compile("--" + name + ": #([0-9a-f]{6});").matcher(style);
        assertTrue(colour.find(), name);
        return colour.group(1);
    }

    /** Source: WCAG 2.2, definition of contrast ratio. */
    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** Source: WCAG 2.2, definition of relative luminance. */
    private static double luminance(String colour) {
        return 0.2126 * channel(colour, 0)
                + 0.7152 * channel(colour, 2)
                + 0.0722 * channel(colour, 4);
    }

    private static double channel(String colour, int at) {
        double share = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    /** Source: W3C's black on white is 21 to 1, the largest ratio there is. */
    @Test
    void areMeasuredWithTheRightContrast() {
        assertEquals(21, contrast("000000", "ffffff"), 1e-9);
    }

    @Test
    void loadNothingFromTheNet() {
        for (SiteFile file : site()) {
            if (file.path().endsWith(".html") || file.path().endsWith(".css")) {
                String text = new String(file.content(), StandardCharsets.UTF_8);
                assertTrue(
                        !text.contains("src=")
                                && !text.contains("<script")
                                && !text.contains("@import")
                                && !text.matches("(?s).*(url\\(\"|<link[^>]*)(http|//).*"),
                        file.path());
            }
        }
    }
}
