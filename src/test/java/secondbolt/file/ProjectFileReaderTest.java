package secondbolt.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import secondbolt.file.form.Forms;
import secondbolt.file.form.ListForm;
import secondbolt.file.form.MapForm;
import secondbolt.file.form.NamedForm;
import secondbolt.file.source.Mistake;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.file.value.AcrossAlong;
import secondbolt.file.value.LengthRange;
import secondbolt.measure.Length;
import secondbolt.measure.Tape;

/** Reads a file of bags: each has a size, and may have a strap, a lining and a colour. */
class ProjectFileReaderTest {
    private record Bag(AcrossAlong<Length> size, Optional<Length> strap, Optional<Boolean> lined) {}

    private static final Key<Tape> UNITS =
            Key.required("units", Forms.choice(Tape.values(), Tape::symbol), "The tape.", "cm");
    private static final Key<AcrossAlong<Length>> SIZE =
            Key.required(
                    "size",
                    ListForm.acrossAlong(Forms.length(LengthRange.of("1 cm", "2 m"))),
                    "The bag.",
                    "[30, 40]");
    private static final Key<Length> STRAP =
            Key.optional("strap", Forms.length(LengthRange.of("1 cm", "2 m")), "Its strap.", "60");
    private static final Key<Boolean> LINED =
            Key.optional("lined", Forms.yesOrNo(), "Whether it is lined.", "yes");
    private static final Key<String> LIKE =
            Key.optional(NamedForm.LIKE, Forms.text(60), "Another bag.", "shopper");
    private static final Form<Bag> BAG =
            MapForm.of(
                    "a bag",
                    List.of(SIZE, STRAP, LINED, LIKE, Key.later("zip", "Its zip.")),
                    f -> Optional.of(new Bag(f.require(SIZE), f.get(STRAP), f.get(LINED))));
    private static final Key<Map<String, Bag>> BAGS =
            Key.required("bags", NamedForm.of("bag", BAG), "Bags.", "{shopper: …}");
    private static final Form<Map<String, Bag>> ROOT =
            MapForm.of("a bag file", List.of(UNITS, BAGS), f -> Optional.of(f.require(BAGS)));

    private static Optional<Map<String, Bag>> read(String text, Mistakes mistakes) {
        return ProjectFileReader.read(SourceFile.of("bags.yaml", text), ROOT, UNITS, mistakes);
    }

    private static Map<String, Bag> readSound(String... lines) {
        Mistakes mistakes = new Mistakes();
        Optional<Map<String, Bag>> bags = read(String.join("\n", lines), mistakes);
        assertEquals(List.of(), mistakes.inOrder());
        return bags.orElseThrow();
    }

    /** The mistakes, each as {@code line:column found; right}. */
    private static List<String> mistakesIn(String... lines) {
        Mistakes mistakes = new Mistakes();
        assertEquals(Optional.empty(), read(String.join("\n", lines), mistakes));
        return mistakes.inOrder().stream().map(ProjectFileReaderTest::brief).toList();
    }

    private static String brief(Mistake m) {
        return m.place().line() + ":" + m.place().column() + " " + m.found() + "; " + m.right();
    }

    @Test
    void readsBareNumbersOnTheMakersTape() {
        Bag inches = readSound("bags: {tote: {size: [12, 15 1/2]}}", "units: in").get("tote");
        assertEquals(Length.ofInches(31, 2), inches.size().along());
        Bag metric = readSound("units: cm", "bags:", "  tote:", "    size: [30, 40]").get("tote");
        assertEquals(Length.ofMillimetres(300), metric.size().across());
    }

    @Test
    void takesWordsAsWrittenWhateverYamlWouldMakeOfThem() {
        Map<String, Bag> bags =
                readSound(
                        "units: cm",
                        "bags:",
                        "  on: {size: [30, 40], lined: no}",
                        "  010: {size: [10, 40]}");
        assertEquals(List.of("on", "010"), List.copyOf(bags.keySet()));
        assertEquals(Optional.of(false), bags.get("on").lined());
    }

    @Test
    void readsADecimalCommaInBlockStyle() {
        Bag bag =
                readSound("units: cm", "bags:", "  tote:", "    size: [30, 40]", "    strap: 3,5")
                        .get("tote");
        assertEquals(Optional.of(Length.ofMillimetres(35)), bag.strap());
    }

    @Test
    void tellsADecimalCommaInBracketsWithTheRightForm() {
        assertEquals(
                List.of(
                        "2:38 `3,5 cm`, a decimal comma that YAML splits in brackets; `3.5 cm` with"
                                + " a point"),
                mistakesIn("units: cm", "bags: {tote: {size: [30, 40], strap: 3,5 cm}}"));
        assertTrue(
                mistakesIn("units: cm", "bags: {tote: {size: [30,5, 40]}}")
                        .get(0)
                        .contains("inside brackets a comma parts values"));
    }

    /** Half a centimetre cut in two is neither a strap of nothing nor a key without a value. */
    @Test
    void tellsADecimalCommaInBracketsOnceWhateverItLeavesBehind() {
        assertEquals(
                List.of(
                        "2:38 `0,5`, a decimal comma that YAML splits in brackets; `0.5` with a"
                                + " point"),
                mistakesIn("units: cm", "bags: {tote: {size: [30, 40], strap: 0,5}}"));
        assertEquals(
                List.of(
                        "4:41 `0,5 cm`, a decimal comma that YAML splits in brackets; `0.5 cm` with"
                                + " a point"),
                mistakesIn(
                        "units: cm",
                        "bags:",
                        "  tote:",
                        "    {size: [30, 40], lined: yes, strap: 0,5 cm}"));
    }

    @Test
    void tellsAllMistakesInTheOrderOfTheFile() {
        List<String> told =
                mistakesIn(
                        "units: cm",
                        "bags:",
                        "  tote:",
                        "    size: [30, 40 cmm]",
                        "    strp: 60",
                        "    lined: maybe",
                        "  pouch:",
                        "    strap: -3",
                        "colour: red");
        assertEquals(
                List.of(
                        "4:16 `40 cmm`, an unknown unit `cmm`; a length in one of mm, cm, m, in,"
                                + " ft, yd, ligne",
                        "5:5 `strp`, which is not a key of a bag; `strap`",
                        "6:12 `maybe`; one of `yes`, `no`",
                        "8:5 a bag without `size`; `size: [30, 40]`",
                        "8:12 `-3`; a length of 1 cm to 2 m",
                        "9:1 `colour`, which is not a key of a bag file; nothing: all"
                                + " that a bag file can say is written"),
                told);
    }

    @Test
    void saysWhereUnknownCannotStand() {
        assertTrue(
                only("units: cm", "bags: {tote: {size: unknown}}")
                        .endsWith("; `unknown` cannot stand here"));
    }

    @Test
    void doesNotTellAMisspeltKeyAsMissingAsWell() {
        assertEquals(
                List.of("3:10 `sise`, which is not a key of a bag; `size`"),
                mistakesIn("units: cm", "bags:", "  tote: {sise: [30, 40]}"));
    }

    @Test
    void refusesAKnownKeyThatIsNotWorkedOutYet() {
        assertTrue(
                mistakesIn("units: cm", "bags: {tote: {size: [30, 40], zip: long}}")
                        .get(0)
                        .contains("does not work out yet"));
    }

    @Test
    void goesOnAfterASlipOfSyntax() {
        List<String> told =
                mistakesIn(
                        "units: cm",
                        "bags:",
                        "  tote:",
                        "    size: [30, 40",
                        "    strap: 5",
                        "  pouch:",
                        "    size: [0, 40]",
                        "\tlined: yes",
                        "    lined: \"yes");
        assertEquals(4, told.size(), told.toString());
        assertTrue(told.get(0).startsWith("4:11 a bracket"), told.get(0));
        assertTrue(told.get(1).startsWith("7:12 `0`"), told.get(1));
        assertTrue(told.get(2).startsWith("8:1 a tab"), told.get(2));
        assertTrue(told.get(3).startsWith("9:12 a quotation mark"), told.get(3));
    }

    @Test
    void doesNotBlameTheKeyWhoseValueHadTheSlip() {
        assertTrue(
                only("units: cm", "bags:", "  tote: {size: [30, 40}").startsWith("3:16 a bracket"));
        assertTrue(
                only("units: cm", "bags:", "  tote:", "    size:", "    - @30")
                        .startsWith("5:7 a letter that YAML keeps"));
        List<String> alias =
                mistakesIn("units: cm", "bags:", "  tote: &t {size: [3, 4]}", "  twin: *t");
        assertEquals(2, alias.size(), alias.toString());
        assertTrue(alias.get(1).startsWith("4:9 an alias"), alias.get(1));
    }

    @Test
    void blamesTheLineThatIsIndentedOtherwiseAndReadsTheOthers() {
        List<String> first =
                mistakesIn(
                        "units: cm",
                        "bags:",
                        "  tote:",
                        "   strap: 30",
                        "    size: [30, 0]",
                        "    lined: no",
                        "  twin: {size: [0, 4]}");
        assertEquals(3, first.size(), first.toString());
        assertTrue(first.get(0).startsWith("4:4 a line indented by 3"), first.get(0));
        assertTrue(first.get(0).endsWith("4 spaces, like its neighbours"), first.get(0));
        assertTrue(first.get(1).startsWith("5:16 `0`"), first.get(1));
        assertTrue(first.get(2).startsWith("7:17 `0`"), first.get(2));
        assertTrue(
                only(
                                "units: cm",
                                "bags:",
                                "  tote:",
                                "    size: [30, 40]",
                                "\u00a0\u00a0\u00a0\u00a0strap: 30",
                                "    lined: no")
                        .contains("no-break"));
        List<String> inmost =
                mistakesIn(
                        "units: cm",
                        "bags:",
                        "  tote:",
                        "    strap: 30",
                        "   lined: no",
                        "    size: [30, 0]");
        assertEquals(2, inmost.size(), inmost.toString());
        assertTrue(inmost.get(0).startsWith("5:4 a line indented by 3"), inmost.get(0));
        assertTrue(inmost.get(1).startsWith("6:16 `0`"), inmost.get(1));
    }

    @Test
    void refusesWhatYamlAllowsButAMakerDoesNotMean() {
        assertTrue(
                only("units: cm", "units: in", "bags: {a: {size: [3, 4]}}")
                        .contains("a second time"));
        assertTrue(only("units: cm", "bags: {a: &x {size: [3, 4]}}").contains("an anchor"));
        assertTrue(only("units: cm", "bags: {a: {size: !!set [3, 4]}}").contains("a tag"));
        assertTrue(only("units: cm", "bags: {a: {size: [1:30, 4]}}").contains("`1:30`"));
        assertTrue(
                only("units: cm", "bags: {a: {size: [3, 4]}}", "---", "units: in")
                        .contains("second document"));
    }

    private static String only(String... lines) {
        List<String> told = mistakesIn(lines);
        assertEquals(1, told.size(), told.toString());
        return told.get(0);
    }

    @Test
    void survivesABombOfAliases() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 40; i++) {
            bomb.append("a" + i + ": &a" + i + " [*a" + (i - 1) + ", *a" + (i - 1) + "]\n");
        }
        assertTrue(mistakesIn(bomb.toString()).size() > 40);
    }

    @Test
    void survivesBracketsWithoutEnd() {
        assertTrue(!mistakesIn("units: cm", "bags: " + "[".repeat(20_000)).isEmpty());
    }

    @Test
    void tellsAnEmptyFile() {
        assertEquals(List.of("1:1 an empty file; `units: …` to begin with"), mistakesIn(""));
        assertEquals(
                List.of("1:1 an empty file; `units: …` to begin with"), mistakesIn("# nothing"));
    }

    @Test
    void makesOneLikeAnotherButForWhatIsSaid() {
        Map<String, Bag> bags =
                readSound(
                        "units: cm",
                        "bags:",
                        "  tote: {size: [30, 40], strap: 60, lined: yes}",
                        "  twin: {like: tote, strap: 80}");
        assertEquals(bags.get("tote").size(), bags.get("twin").size());
        assertEquals(Optional.of(Length.ofMillimetres(800)), bags.get("twin").strap());
    }

    @Test
    void namesTheOnesItCouldBeLike() {
        assertEquals(
                List.of("4:16 `tott`; the name of a bag that stands before it: `tote`"),
                mistakesIn(
                        "units: cm", "bags:", "  tote: {size: [30, 40]}", "  twin: {like: tott}"));
    }

    @Test
    void showsTheLineWithACaret() {
        Mistakes mistakes = new Mistakes();
        read("units: cm\nbags: {tote: {size: [30, 4 km]}}", mistakes);
        assertEquals(
                "bags.yaml:2:26: mistake: found `4 km`, an unknown unit `km`; right would be a"
                        + " length in one of mm, cm, m, in, ft, yd, ligne\n"
                        + "    bags: {tote: {size: [30, 4 km]}}\n"
                        + "                             ^",
                mistakes.inOrder().get(0).toString());
    }

    @Test
    void describesTheSameKeysInASchema() {
        String schema = ProjectFileReader.schema(ROOT, "Bags");
        assertTrue(schema.contains("\"additionalProperties\": false"));
        assertTrue(schema.contains("\"description\": \"Its strap. A length of 1 cm to 2 m.\""));
    }
}
