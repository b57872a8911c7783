package secondbolt.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import secondbolt.cloth.Written;
import secondbolt.cloth.yields.ClothCalculation;
import secondbolt.measure.Tape;
import secondbolt.prepare.due.Preparation;
import secondbolt.task.Hazard;
import secondbolt.task.WorkStep;
import secondbolt.worksheet.Finding;
import secondbolt.worksheet.Worksheet;

/** What is told of cloths as they come, and what is to be done to them. */
class PrepareWorksheetTest {
    private static Worksheet worksheet(Set<String> cut, String... lines) {
        Preparation all = Preparation.of(ClothCalculation.work(Written.cloths("cm", lines)), cut);
        return new PrepareWorksheet(all, Tape.CENTIMETRE).worksheet();
    }

    private static Worksheet worksheet(String... lines) {
        return worksheet(Set.of(), lines);
    }

    private static Optional<WorkStep> step(Worksheet worksheet, String name) {
        return worksheet.gives().steps().stream().filter(s -> s.name().equals(name)).findFirst();
    }

    private static List<String> open(Worksheet worksheet) {
        return worksheet.gives().steps().stream()
                .filter(step -> !step.isDone())
                .map(WorkStep::name)
                .toList();
    }

    private static Set<String> codes(Worksheet worksheet) {
        Set<String> codes = new TreeSet<>();
        worksheet.findings().stream().map(Finding::code).forEach(codes::add);
        return codes;
    }

    private static final String READY =
            "  sheet: {size: [150, 240], fibre: cotton, known by: label, mass: 500 g,"
                    + " prewash: done, surveyed: {by: held to the light, when: after the wash}}";

    /** Nothing to do but to press it. */
    @Test
    void printsNoSheetForAClothThatIsReady() {
        Worksheet ready = worksheet(READY);
        assertEquals(List.of(), ready.sheets());
        assertEquals(List.of("press"), open(ready));
        assertTrue(step(ready, "survey").orElseThrow().isDone());
        assertEquals(Set.of(), codes(ready));
    }

    @Test
    void ordersWhatSpreadsBeforeWhatIsHandledAndWhatIsHandledBeforeTheWash() {
        Worksheet found =
                worksheet(
                        "  coat: {size: [150, 240], fibre: wool, came with: [moths, mildew,"
                                + " camphor, old seams], prewash: no}");
        assertEquals(
                List.of(
                        "freeze",
                        "dry mildew",
                        "air",
                        "unpick",
                        "weigh",
                        "mark square",
                        "prewash",
                        "press",
                        "survey"),
                open(found));
        assertTrue(step(found, "prewash").orElseThrow().isWet());
        Set<String> before = new TreeSet<>();
        step(found, "prewash").orElseThrow().follows().forEach(f -> before.add(f.step()));
        assertTrue(before.containsAll(Set.of("freeze", "unpick", "weigh", "mark square")));
    }

    /**
     * Sources: The Textile Museum, 7 days; AATCC 135, 4 hours flat; a line-dried sheet 4 to 24
     * hours, common practice.
     */
    @Test
    void waitsAsLongAsTheSourcesSay() {
        Worksheet found =
                worksheet("  coat: {size: [150, 240], fibre: wool, came with: moths, prewash: no}");
        assertEquals(
                Duration.ofDays(7), step(found, "freeze").flatMap(WorkStep::pause).get().least());
        assertEquals(
                Duration.ofHours(4), step(found, "prewash").flatMap(WorkStep::pause).get().least());
        assertEquals(
                Duration.ofHours(4), step(found, "press").flatMap(WorkStep::pause).get().most());
        assertTrue(step(found, "prewash").orElseThrow().text().contains("30 minutes"));
    }

    @Test
    void warnsTheHandWhereItCanBeHurt() {
        Worksheet found =
                worksheet(
                        "  coat: {size: [150, 240], fibre: wool, came with: [mildew, old seams],"
                                + " prewash: done}");
        assertEquals(
                Set.of(Hazard.MILDEW_SPORES), step(found, "dry mildew").orElseThrow().hazards());
        assertEquals(Set.of(Hazard.BLADE), step(found, "unpick").orElseThrow().hazards());
    }

    @Test
    void tellsNoMoreOfWhatItIsRidOf() {
        Worksheet rid =
                worksheet(
                        "  coat: {size: [150, 240], fibre: wool, mass: 1 kg, came with: [moths,"
                                + " mildew], rid of: [moths, mildew], prewash: done}");
        assertEquals(Set.of(), codes(rid));
        assertEquals(List.of(), rid.sheets());
    }

    /** What one cloth is rid of is never taken over by another that is like it. */
    @Test
    void takesOverWhatAClothCameWithButNotWhatItIsRidOf() {
        Worksheet found =
                worksheet(
                        "  left: {size: [150, 240], came with: moths, rid of: moths}",
                        "  right: {like: left}");
        assertEquals(
                List.of("right"),
                found.findings().stream()
                        .filter(f -> f.code().equals("prepare-moths"))
                        .map(f -> f.about().words())
                        .toList());
    }

    /** Softener is washed out though the cloth was washed before it was measured. */
    @Test
    void washesSoftenerOut() {
        Worksheet soft = worksheet(READY.replace("}}", "}, came with: softener}"));
        assertTrue(open(soft).contains("prewash"));
        assertTrue(codes(soft).contains("prepare-survey-due"));
        assertFalse(open(soft).contains("mark square"));
    }

    /** Wool that has felted only felts on: it is not sent into the wash once more. */
    @Test
    void sendsNoFeltedWoolIntoTheWashAgain() {
        String square = "prewash: {marked: [50, 50], now: [46, 44], then: [[45.5, 43]]}";
        Worksheet wool = worksheet("  coat: {size: [150, 240], fibre: wool, " + square + "}");
        assertTrue(codes(wool).contains("prepare-felted"));
        assertFalse(open(wool).contains("prewash again"));
        Worksheet cotton = worksheet("  coat: {size: [150, 240], fibre: cotton, " + square + "}");
        assertTrue(codes(cotton).contains("prepare-wash-again"));
        assertTrue(open(cotton).contains("prewash again"));
    }

    /** The glue of interfacing would set: what its packet says is all that holds. */
    @Test
    void neitherWashesNorPressesInterfacing() {
        Worksheet fusible =
                worksheet(
                        "  fusible: {role: interfacing, size: [90, 200], fibre: polyester,"
                                + " prewash: no}");
        assertFalse(open(fusible).contains("prewash"));
        assertFalse(open(fusible).contains("press"));
    }

    @Test
    void doesNothingMoreToAClothThatIsCut() {
        Worksheet cut =
                worksheet(
                        Set.of("coat"),
                        "  coat: {size: [150, 240], fibre: wool, came with: [moths], prewash: no}");
        assertEquals(List.of(), open(cut));
        assertEquals(Set.of(), codes(cut));
    }

    /** Never washed, whatever is still to come: its label comes first. */
    @Test
    void sendsNothingIntoTheWashAgainstItsLabel() {
        Worksheet silk =
                worksheet(
                        "  silk: {size: [90, 200], fibre: Seide, care label: {wash: no, iron: no},"
                                + " prewash: no}");
        assertFalse(open(silk).contains("prewash"));
        assertFalse(open(silk).contains("press"));
        assertEquals(Set.of("prepare-label-not-washed"), codes(silk));
    }

    /** A thousandth of the right unit: 9 kg on 50 by 60 cm would be 30 kg/m², derived. */
    @Test
    void doubtsAMassThatNoClothHas() {
        assertTrue(
                codes(worksheet("  rug: {size: [50, 60], mass: 9 kg}"))
                        .contains("prepare-weight-odd"));
        // Sheet 230 by 275 cm of 822 g: 130 g/m², derived.
        assertFalse(
                codes(worksheet("  sheet: {size: [230, 275], mass: 822 g}"))
                        .contains("prepare-weight-odd"));
    }

    @Test
    void refusesToBeRidOfWhatNeverCame() {
        assertEquals(
                List.of("3:37 a cloth rid of moths, which it did not come with"),
                Written.mistakes("  sheet: {size: [150, 240], rid of: moths}"));
    }
}
