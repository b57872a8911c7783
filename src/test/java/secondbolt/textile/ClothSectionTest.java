package secondbolt.textile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.cloth.Written;
import secondbolt.cloth.yields.ClothResult;
import secondbolt.file.value.Answer;
import secondbolt.measure.Length;
import secondbolt.textile.fibre.Fibre;

/** How a cloth is read, and how a mistake in it is told at its place. */
class ClothSectionTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "fibre: {cotton: 65 %, flax: 30 %} | 5:12 shares that add up to 95 %",
                "fibre: {cotton: 0 %, flax: 100 %} | 5:21 `0 %`",
                "outline: [[0, 0], [9, 9], [9, 0]] | 5:14 `size` and `outline` together",
                "trim: {left: 60, right: 40} | 5:11 a trim of 100 cm across and 0 cm along, which"
                        + " leaves no cloth",
                "prewash: {marked: [120, 50], now: [118, 48]} | 5:14 a marked square of 120 cm on a"
                        + " cloth that is 100 cm across",
                "prewash: {marked: [50, 50], now: [48, 5]} | 5:38 a square that is 10 % of what was"
                        + " marked along",
                "sides measured: {diagonal: 150} | 5:21 a diagonal of 150 cm",
                "sides measured: {diagonal: 310} | 5:21 a diagonal of 310 cm",
                "sides measured: {left: 150} | 5:21 a side of 150 cm on a cloth that is 200 cm"
                        + " along",
                "flaws: [{what: hole, at: [99, 50], size: [6, 6]}] | 5:30 `hole`, which reaches 2"
                        + " cm past the right edge",
                "flaws: [{what: hole, at: [140, 50], round: 6}] | 5:30 `hole`, which lies wholly"
                        + " outside the cloth",
                "flaws: [{what: hole, at: [9, 9], size: [2, 2], round: 2}] | 5:59 `size` and"
                        + " `round` together",
                "flaws: [{what: hole, at: [9, 9]}] | 5:13 `hole` without its size",
                "flaws: [{what: hole, size: [9, 9]}] | 5:13 `hole` without `at`",
                "flaws: [{what: tear, outline: [[0, 0], [10, 10], [10, 0], [0, 10]]}] | 5:35 an"
                        + " outline that crosses or touches itself at [5 cm, 5 cm]",
                "features: [{what: hem, at: [9, 9], size: [2, 2], use: 'keep: pocket.top'}] | 5:59"
                        + " `keep: pocket.top`",
                "features: [{what: hem, at: [9, 9], size: [2, 2], keep: pocket}] | 5:60 `pocket`",
                "features: [{what: hem, at: [9, 9], size: [2, 2], keep: pocket.top.left}] | 5:60"
                        + " `pocket.top.left`",
                "features: [{what: hem, at: [9, 9], size: [2, 2], keep: pocket.}] | 5:60 `pocket.`",
                "features: [{what: hem, at: [9, 9], round: 2, keep: pocket.top}] | 5:56 `keep` on a"
                        + " feature that is no strip",
                "features: [{what: hem, at: [9, 9], size: [2, 2], use: avoid, keep: pocket.top}] |"
                        + " 5:72 `use` and `keep` together",
                "edges: {left: a very long account of what this edge once was} | 5:19 text of 46"
                        + " letters",
                "nap: two-way | 5:10 `two-way`",
            })
    void tellsAMistakeWhereItStands(String line, String mistake) {
        assertEquals(
                List.of(mistake),
                Written.mistakes("  cloth:", "    size: [100, 200]", "    " + line));
    }

    @Test
    void takesTheOneThatIsKnown() {
        List<String> both = List.of("    weight: 165 g/m2", "    mass: unknown");
        for (List<String> lines : List.of(both, List.of(both.get(1), both.get(0)))) {
            ClothResult result =
                    Written.result(
                            "cm", "  cloth:", "    size: [100, 200]", lines.get(0), lines.get(1));
            assertEquals(330, result.heaviness().mass().orElseThrow().grams(), 1e-9);
        }
        assertEquals(
                List.of(),
                Written.mistakes(
                        "  cloth:",
                        "    size: [100, 200]",
                        "    weight: unknown",
                        "    mass: unknown"));
    }

    @Test
    void wantsTheWeightOrTheMass() {
        assertEquals(
                List.of("6:13 `weight` and `mass` together"),
                Written.mistakes(
                        "  cloth:",
                        "    size: [100, 200]",
                        "    mass: 3 kg",
                        "    weight: 90 g/m2"));
    }

    @Test
    void wantsASizeOrAnOutline() {
        assertEquals(
                List.of("4:5 a cloth without `size` or `outline`"),
                Written.mistakes("  cloth:", "    role: main"));
    }

    @Test
    void tellsWhereAnOutlineCrossesItself() {
        assertEquals(
                List.of("4:14 an outline that crosses or touches itself at [50 cm, 50 cm]"),
                Written.mistakes(
                        "  cloth:", "    outline: [[0, 0], [100, 100], [100, 0], [0, 100]]"));
    }

    @Test
    void letsAClothLikeAnotherHaveAnOutlineOfItsOwn() {
        Map<String, Cloth> cloths =
                Written.cloths(
                        "cm",
                        "  one:",
                        "    size: [100, 200]",
                        "    weight: 165 g/m2",
                        "    sides measured: {left: 201}",
                        "    flaws: [{what: hole, at: [50, 50], round: 3}]",
                        "  two: {like: one, flaws: [], mass: 300 g, outline: [[0,0], [90,0],"
                                + " [0,80]]}",
                        "  three: {like: one, size: [100, 150]}");
        Cloth two = cloths.get("two");
        assertEquals(List.of(), two.condition().flaws());
        assertEquals(
                Length.ofMillimetres(900), two.extent().toOptional().orElseThrow().size().across());
        assertEquals(true, two.textile().weight().isEmpty());
        assertEquals(
                Length.ofMillimetres(1500),
                cloths.get("three").extent().toOptional().orElseThrow().size().along());
    }

    /** What was found on one curtain is not found on its twin. */
    @Test
    void neverTakesFlawsOverFromTheClothItIsLike() {
        Map<String, Cloth> cloths =
                Written.cloths(
                        "cm",
                        "  one:",
                        "    size: [100, 200]",
                        "    sides measured: {left: 201}",
                        "    surveyed: {by: held to the light, when: after the wash}",
                        "    features: [{what: border, at: [50, 190], size: [100, 8]}]",
                        "    trim: {top: 4}",
                        "    flaws: [{what: hole, at: [50, 50], round: 3}]",
                        "  two: {like: one}",
                        "  three: {like: two, flaws: none, trim: none, features: none}");
        Cloth two = cloths.get("two");
        assertEquals(1, two.condition().flaws().size());
        assertEquals("border", two.condition().flaws().get(0).what());
        assertEquals(false, two.condition().areFlawsTold());
        assertEquals(true, two.condition().survey().isEmpty());
        assertEquals(Length.ofMillimetres(2000), two.extent().toOptional().get().bounds().bottom());
        assertEquals(Length.ofMillimetres(40), two.edging().trim().top());
        Cloth three = cloths.get("three");
        assertEquals(List.of(), three.condition().flaws());
        assertEquals(true, three.condition().areFlawsTold());
        assertEquals(Length.ZERO, three.edging().trim().top());
    }

    @Test
    void doesNotGiveAClothOfAnotherSizeTheSameMass() {
        assertEquals(
                List.of("6:26 a size of its own with the `mass` of the cloth it is like"),
                Written.mistakes(
                        "  one:",
                        "    size: [100, 200]",
                        "    mass: 300 g",
                        "  two: {like: one, size: [50, 50]}"));
    }

    @Test
    void readsABlendAndAnUnknownFibre() {
        Map<String, Cloth> cloths =
                Written.cloths(
                        "cm",
                        "  one: {size: unknown, fibre: {cotton: 65 %, polyester: 35 %}}",
                        "  two: {size: unknown, fibre: unknown}",
                        "  three: {size: unknown, fibre: linen}");
        assertEquals(
                List.of("cotton 65 %, polyester 35 %", "open", "linen"),
                cloths.values().stream()
                        .map(c -> c.textile().fibre().orElseThrow())
                        .map(f -> f.toOptional().map(Fibre::words).orElse("open"))
                        .toList());
        assertEquals(Answer.unknown(), cloths.get("two").textile().fibre().orElseThrow());
    }
}
