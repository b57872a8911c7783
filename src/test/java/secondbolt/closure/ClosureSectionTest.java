package secondbolt.closure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import secondbolt.closure.fastening.Fastening;
import secondbolt.closure.placket.Closure;
import secondbolt.closure.placket.PlacketSpot;
import secondbolt.closure.row.ClosureCalculation;
import secondbolt.closure.row.ClosureResult;
import secondbolt.file.source.Mistakes;
import secondbolt.file.source.SourceFile;
import secondbolt.fit.result.FitCalculation;
import secondbolt.fit.result.FitResult;
import secondbolt.measure.Tape;
import secondbolt.project.WrittenProject;

/** Closures as they are written, and what is told of those that cannot be. */
class ClosureSectionTest {
    /** A bodice over a skirt: 40 and 60 cm down the front, the body line 20 cm down. */
    private static final String COAT =
            """
            title: Coat
            units: cm
            pattern:
              rights: mine
              pieces:
                bodice: {cut: pair, lines: {body: 20}, rectangle: [30, 40],
                  marks: [{what: bust point, at: [10, 24]}]}
                skirt: {cut: pair, rectangle: [30, 60]}
            alterations: [{lengthen: body, by: 2}]
            closures:
            """;

    private static final String BUTTONS =
            "button: {across: 15 mm, thick: 3 mm}, holes: upright, laps: right over left,"
                    + " extension: 2, first: 2";

    private static Optional<WrittenProject> read(String closure, List<String> told) {
        Mistakes mistakes = new Mistakes();
        Optional<WrittenProject> project =
                WrittenProject.read(
                        SourceFile.of("test.yaml", COAT + "  front: {" + closure + "}\n"),
                        mistakes);
        mistakes.inOrder().forEach(m -> told.add(m.found() + "; " + m.right()));
        return project;
    }

    private static ClosureResult result(String closure) {
        List<String> mistakes = new ArrayList<>();
        WrittenProject project =
                read(closure, mistakes).orElseThrow(() -> new AssertionError(mistakes.toString()));
        FitResult fit =
                FitCalculation.work(
                        project.pattern().orElseThrow(), project.alterations(), Tape.CENTIMETRE);
        Map<String, Closure> closures = project.closures().orElseThrow();
        return ClosureCalculation.all(
                        closures, Optional.of(fit), project.machine(), Tape.CENTIMETRE)
                .results()
                .get(0);
    }

    /** Hand-worked: holes of 18 mm on 60 mm leave 3 gaps at the most, of 20 mm; 16 never do. */
    @Test
    void refusesALargestGapThatNoCountKeeps() {
        List<String> told = new ArrayList<>();
        String placket = "length: 10, last: 2, " + BUTTONS + ", largest gap: ";
        read(placket + "1.6", told);
        assertEquals(1, told.size(), told::toString);
        assertTrue(told.get(0).contains("a largest gap of 1.6 cm"), told::toString);
        assertTrue(told.get(0).contains("`largest gap` of at least 2 cm"), told::toString);
        told.clear();
        assertTrue(read(placket + "2", told).isPresent(), told::toString);
        assertEquals(4, result(placket + "2").marks().size());
    }

    private static List<Double> places(List<PlacketSpot> spots) {
        return spots.stream()
                .map(spot -> Math.round(spot.at().millimetres() * 100) / 100.0)
                .toList();
    }

    /** Derived: the seam is 42 cm down after 2 cm more above it, and the whole is 102 cm long. */
    @Test
    void makesTheSeamBetweenTwoEdgesBulkByItself() {
        ClosureResult result =
                result("on: [bodice.left, skirt.left], buttons: 6, last: 20, " + BUTTONS);
        assertEquals(1020, result.length().millimetres(), 0.01);
        assertEquals(List.of(420.0), places(result.plan().bulks()));
    }

    /**
     * Derived: what lies above the body line stays at 15 cm; the bust point and what lies below
     * move down by 2 cm; 50 cm down as printed is 10 cm down the skirt.
     */
    @Test
    void carriesPlacesToMeetAndBulkWithTheAlterations() {
        ClosureResult result =
                result(
                        "on: [bodice.left, skirt.left], buttons: 9, last: 20, "
                                + BUTTONS
                                + ", meet: [{at: bodice.bust point}, {at: 50, why: waist}],"
                                + " bulk: [{at: 15, why: dart, clear: 2}]");
        assertEquals(List.of(260.0, 520.0), places(result.plan().meets()));
        assertEquals("bust point", result.plan().meets().get(0).why());
        assertEquals(List.of(150.0, 420.0), places(result.plan().bulks()));
        assertEquals(20, result.plan().bulks().get(0).clear().millimetres(), 1e-9);
    }

    @Test
    void takesTheKindFromWhatIsCounted() {
        ClosureResult result = result("length: 20, ties: 3, first: 2, last: 2");
        assertEquals(Fastening.Kind.TIES, result.closure().fastening().kind());
        assertEquals(3, result.marks().size());
    }

    private static Map<?, ?> figures(String closure) {
        List<String> mistakes = new ArrayList<>();
        WrittenProject project =
                read(closure, mistakes).orElseThrow(() -> new AssertionError(mistakes.toString()));
        Map<String, Closure> closures = project.closures().orElseThrow();
        List<ClosureResult> results =
                ClosureCalculation.all(
                                closures, Optional.empty(), project.machine(), Tape.CENTIMETRE)
                        .results();
        return (Map<?, ?>) ClosureFigures.of(closures.keySet(), results).asMap().get("front");
    }

    /** Hooks and ties have no holes, and where they meet edge to edge neither side lies over. */
    @Test
    void writesNoHolesForWhatHasNone() {
        Map<?, ?> ties = figures("length: 20, ties: 3, first: 2, last: 2");
        assertTrue(ties.containsKey("holes") && ties.containsKey("laps"));
        assertNull(ties.get("holes"));
        assertNull(ties.get("laps"));
        Map<?, ?> snaps =
                figures(
                        "length: 20, snaps: 3, first: 2, last: 2, extension: 2,"
                                + " laps: left over right");
        assertNull(snaps.get("holes"));
        assertEquals("left over right", snaps.get("laps"));
        Map<?, ?> buttons = figures("length: 20, buttons: 3, last: 3, " + BUTTONS);
        assertEquals("upright", buttons.get("holes"));
        assertEquals("right over left", buttons.get("laps"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            textBlock =
                    """
                    length: 20, snaps: 4, buttons: 4, first: 1, last: 1, laps: right over left, extension: 2|`snaps` in a closure with buttons; `buttons`, or a closure of its own
                    length: 20, snaps: 4, first: 1, last: 1, laps: right over left, extension: 2, holes: level|`holes` in a closure with snaps; nothing: only buttons have holes
                    length: 20, snaps: 4, first: 1, last: 1, extension: 2|a closure of snaps without `laps`; `laps: right over left`, one of `right over left`, `left over right`, `front over back`, `back over front`
                    length: 20, hooks: 2, first: 1|a closure of 2 hooks without `last`; `last: 11`, from the bottom edge to the centre of the last hook
                    length: 20, kind: hooks, first: 1, last: 1|a closure without a count; `hooks: 4`, or `largest gap: 9`
                    length: 20, ties: 2, first: {between: [3, 1]}, last: 1|a list of 2; the shorter first
                    length: 20, ties: 2, first: 1, last: 1, rows apart: 8, extension: 2|rows so far apart that the outer one lies beyond the finished edge; less than twice the extension, or a wider extension
                    length: 20, ties: 2, first: 1, last: 1, meet: [{at: bodice.bust point}]|`bodice.bust point` on a placket by tape; a length from the top, or `on` with the edge of that piece
                    on: skirt.left, ties: 2, first: 1, last: 1, meet: [{at: bodice.bust point}]|`bodice.bust point`, which is no mark of a piece with an edge of `on`; a mark of one of these pieces, or a length from the top
                    on: skirt.left, ties: 2, first: 1, last: 1, bulk: [{at: 61}]|a place 61 cm (24 in) down a placket of 60 cm (23⅝ in); less than its length
                    """)
    void tellsWhatCannotBe(String closure, String mistake) {
        List<String> told = new ArrayList<>();
        read(closure, told);
        assertEquals(List.of(mistake), told);
    }
}
