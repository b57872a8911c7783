package secondbolt.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages and sheets of the demos and of four strangers, read as a maker reads them. */
class SentencesTest {
    private static final List<String> STRANGERS = List.of("skirt", "trousers", "smock", "hemd");

    /** A name, a dot and a name, as only the file has them. */
    private static final Pattern DOTTED = Pattern.compile("\\p{L}\\.\\p{L}+");

    /** Keys and their marks that are no words of the trade. */
    private static final Pattern ONLY_IN_THE_FILE =
            Pattern.compile(
                    "\\b(hidden use|sides measured|known by:|cut so far|prewash:)\\b|[{}\\[\\]]");

    private static final Pattern SLIPS =
            Pattern.compile(
                    "\\b(\\p{L}+) \\1\\b|\\ba [aeio]\\p{L}|\\ban [bcdfgjklmnpqrstvwz]\\p{L}"
                            + "|\\b1 (reasons|warnings|pieces|snaps|buttons|layers)\\b"
                            + "|(snaps|buttons|hooks|ties) \\d+ moved");

    @TempDir static Path folder;

    private static final Map<String, String> PAGES = new LinkedHashMap<>();
    private static final Map<String, String> ALL = new TreeMap<>();

    @BeforeAll
    static void makeThem() throws IOException {
        Desktop desktop = new Desktop(folder);
        for (String name : STRANGERS) {
            try (InputStream text =
                    SentencesTest.class.getResourceAsStream("/sentences/" + name + ".yaml")) {
                desktop.with("projects/" + name + "/project.yaml", text.readAllBytes());
            }
        }
        assertEquals(Secondbolt.DONE, desktop.run("notebook", "--quiet"), desktop.err());
        read(folder.resolve("site"));
        read(DemoSite.folder());
    }

    private static void read(Path site) throws IOException {
        List<Path> projects;
        try (Stream<Path> folders = Files.list(site)) {
            projects =
                    folders.filter(f -> Files.exists(f.resolve("workings.json"))).sorted().toList();
        }
        for (Path project : projects) {
            String name = project.getFileName().toString();
            PAGES.put(name, VisibleText.page(project));
            VisibleText.of(project).forEach((file, text) -> ALL.put(name + "/" + file, text));
        }
    }

    private static List<String> found(Pattern sought, Map<String, String> texts) {
        List<String> found = new ArrayList<>();
        texts.forEach(
                (file, text) -> {
                    Matcher matcher = sought.matcher(text);
                    while (matcher.find()) {
                        int from = Math.max(0, matcher.start() - 30);
                        int to = Math.min(text.length(), matcher.end() + 30);
                        found.add(file + ": " + text.substring(from, to).replace('\n', ' '));
                    }
                });
        return found;
    }

    @Test
    void sayAnEdgeAsAMakerSaysItAndNotAsTheFileWritesIt() {
        assertEquals(List.of(), found(DOTTED, ALL));
        assertTrue(PAGES.get("hemd").contains("the Saum of the Vorderteil"), PAGES.get("hemd"));
        assertTrue(PAGES.get("porch-shirt").contains("the hem of the front"));
    }

    @Test
    void haveNoKeyOfTheFileOutsideOfWhatIsToBeTyped() {
        assertEquals(List.of(), found(ONLY_IN_THE_FILE, ALL));
    }

    @Test
    void haveNoWordTwiceAndTheRightNumberAndArticle() {
        assertEquals(List.of(), found(SLIPS, PAGES));
    }

    @Test
    void askNoCareForABurnTestThatIsDone() {
        for (String name : List.of("gore-skirt", "skirt", "smock")) {
            assertFalse(PAGES.get(name).contains("tweezers"), name);
            assertTrue(PAGES.get(name).contains("cannot tell a blend"), name);
        }
        assertTrue(PAGES.get("trousers").contains("tweezers"));
    }

    @Test
    void speakOfDyeOnlyWhereAFibreIsNotKnown() {
        assertFalse(PAGES.get("porch-shirt").contains("ye does not hide"));
        assertFalse(PAGES.get("hemd").contains("dye bath"));
    }

    @Test
    void giveAShirtNoAdviceForTrousers() {
        assertFalse(PAGES.get("porch-shirt").contains("trousers"));
        assertFalse(PAGES.get("hemd").contains("trousers"));
    }

    /** The bulletin of 1922 speaks of busts. */
    @Test
    void citeARuleForBustsOfNoHip() {
        assertTrue(
                PAGES.get("skirt")
                        .contains(
                                "The hip of 41 in lies between two sizes: the next larger, 14, is"
                                        + " the one to start from (common practice, no source)."));
    }

    /** 1 in is 2.5 cm on a metric tape, and ¾ in of men's trousers are nobody's skirt. */
    @Test
    void judgeTheEaseOfASkirtByItsOwnRowsOnItsOwnTape() {
        String page = PAGES.get("gore-skirt");
        assertFalse(page.contains("2.55 cm ("), page);
        assertFalse(page.contains("ease at the hip 3.8 cm"), page);
        assertTrue(
                page.contains(
                        "the least asked for is 1.3 cm (Central Washington University costume"
                                + " text, ch. 16), others ask for as much as 2.5 cm."),
                page);
    }

    @Test
    void nameOneSourceInANoteAndNumberTheOthers() {
        String page = PAGES.get("porch-shirt");
        assertTrue(
                page.contains(
                        "11.6 cm of ease at the bust, more than wearing ease asks, which is 10 cm"
                                + " at most (McCunn, How to Make Sewing Patterns)."
                                + " Sources 1, 2, 3"),
                page);
        for (String source :
                List.of(
                        "Central Washington University costume text, ch. 16: ease at the bust 3.8"
                                + " cm to 5 cm",
                        "encyclopaedia entry on ease: ease at the bust 5 cm to 6.5 cm",
                        "New Mexico State University, Guide C-228: ease at the bust 7.5 cm to 10"
                                + " cm")) {
            assertTrue(VisibleText.lines(page).contains(source), source);
        }
    }

    @Test
    void sayThatAllPiecesHaveTheirPlaceOnlyOfThoseThereIsClothFor() {
        assertTrue(
                PAGES.get("trousers")
                        .contains("All pieces for which there is cloth have their place"));
    }

    @Test
    void takeNothingForGrantedTwice() {
        String once = "a trade convention: 5 cm off 150 cm, 2 in off 60 in";
        PAGES.forEach(
                (name, page) ->
                        assertTrue(
                                VisibleText.lines(page).stream().filter(once::equals).count() <= 1,
                                name));
    }
}
