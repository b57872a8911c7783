package secondbolt.closure.spacing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The solver against every row there is, looked at one by one. */
class SpacingSolverTest {
    private static final double SAME = 1e-9;

    private static Steps plenty() {
        return new Steps(Long.MAX_VALUE);
    }

    private static SpacingProblem even(int count, int first, int last) {
        return problem(count, Zone.at(first), Zone.at(last), List.of(), List.of());
    }

    private static SpacingProblem problem(
            int count, Zone first, Zone last, List<Integer> meets, List<Zone> bulk) {
        return new SpacingProblem(
                count, first, last, 1, 1000, meets, Collections.nCopies(count, bulk));
    }

    private static Spacing solved(SpacingProblem problem) {
        return SpacingSolver.solve(problem, plenty()).orElseThrow();
    }

    /** Source: a shop's blog on spacing buttonholes, 2023: 10 buttons over 36 cm, 9 spaces of 4. */
    @Test
    void dividesEvenlyWhereNothingIsInTheWay() {
        Spacing spacing = solved(even(10, 0, 720));
        assertEquals(List.of(0, 80, 160, 240, 320, 400, 480, 560, 640, 720), spacing.places());
        assertEquals(0, spacing.deviation());
    }

    @Test
    void putsOneWhereItMustMeet() {
        // Derived: gaps 7, 7, 8, 8 around a mean of 7.5.
        Spacing spacing = solved(problem(5, Zone.at(0), Zone.at(30), List.of(14), List.of()));
        assertEquals(List.of(0, 7, 14, 22, 30), spacing.places());
        assertEquals(0.5, spacing.deviation(), SAME);
    }

    @Test
    void movesAllALittleRatherThanOneALot() {
        // Derived: gaps 11, 11, 8 rather than 10, 12, 8 or 9, 8, 13.
        Spacing spacing =
                solved(problem(4, Zone.at(0), Zone.at(30), List.of(), List.of(new Zone(18, 21))));
        assertEquals(List.of(0, 11, 22, 30), spacing.places());
    }

    @Test
    void usesTheRangesOfTheEnds() {
        Spacing spacing =
                solved(
                        problem(
                                4,
                                new Zone(0, 4),
                                Zone.at(32),
                                List.of(),
                                List.of(new Zone(11, 11), new Zone(21, 21))));
        assertEquals(List.of(2, 12, 22, 32), spacing.places());
    }

    @Test
    void leavesOneToBeWorkedByHandWhereNothingElseServes() {
        Spacing spacing =
                solved(problem(3, Zone.at(0), Zone.at(20), List.of(10), List.of(new Zone(8, 12))));
        assertEquals(List.of(0, 10, 20), spacing.places());
        assertEquals(List.of(1), spacing.byHand());
    }

    @Test
    void saysWhatCannotBe() {
        assertEquals(
                Optional.empty(),
                SpacingSolver.solve(
                        problem(2, Zone.at(0), Zone.at(20), List.of(10), List.of()), plenty()));
    }

    /** A coat band of 1.1 m, both ends free by 5 cm, and what lies on it: counted, not timed. */
    @Test
    void takesFewStepsWhereBothEndsAreFree() {
        SpacingProblem coat =
                problem(
                        12,
                        new Zone(40, 140),
                        new Zone(2000, 2100),
                        List.of(613, 850, 1500),
                        List.of(new Zone(480, 540), new Zone(1190, 1260)));
        Spacing spacing = SpacingSolver.solve(coat, new Steps(1_000_000)).orElseThrow();
        assertEquals(List.of(), spacing.byHand());
    }

    /** As long and as many as nobody sews: each ends, and in the steps that a closure has. */
    @ParameterizedTest(name = "{0} fasteners")
    @ValueSource(ints = {2, 20, 60, 200})
    void endsHoweverLongAndBlockedARowIs(int count) {
        List<Zone> thousands = new ArrayList<>();
        for (int at = 0; at < 9000; at += 3) {
            thousands.add(new Zone(at, at + 1));
        }
        Steps most = new Steps(400_000_000);
        SpacingProblem fine =
                new SpacingProblem(
                        count,
                        Zone.at(40),
                        Zone.at(9999),
                        1,
                        Integer.MAX_VALUE,
                        List.of(),
                        Collections.nCopies(count, thousands));
        assertTrue(SpacingSolver.solve(fine, most).isPresent());
    }

    @Test
    void findsNothingWhereNothingCanBe() {
        List<SpacingProblem> none =
                List.of(
                        problem(3, Zone.at(20), Zone.at(10), List.of(), List.of()),
                        problem(3, Zone.at(0), Zone.at(10), List.of(-5), List.of()),
                        problem(3, Zone.at(0), Zone.at(10), List.of(15), List.of()),
                        problem(20, Zone.at(0), Zone.at(10), List.of(), List.of()),
                        problem(3, new Zone(-40, -30), new Zone(-60, -50), List.of(), List.of()),
                        new SpacingProblem(
                                2,
                                Zone.at(0),
                                Zone.at(10),
                                2_000_000_000,
                                Integer.MAX_VALUE,
                                List.of(),
                                List.of(List.of(), List.of())));
        for (SpacingProblem problem : none) {
            assertEquals(Optional.empty(), SpacingSolver.solve(problem, plenty()));
            assertFalse(SpacingSolver.isClear(problem, 8, plenty()));
        }
    }

    @Test
    void givesUpARowThatIsTooFree() {
        SpacingProblem free =
                problem(
                        37,
                        new Zone(0, 5139),
                        new Zone(4542, 6000),
                        List.of(1835, 2553, 4009),
                        List.of(new Zone(1555, 2217), new Zone(2680, 2996)));
        assertThrows(TooFree.class, () -> SpacingSolver.solve(free, new Steps(10_000)));
    }

    /** 10,000 rows in all; seeds fixed. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void findsTheBestOfAllRows(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int possible = 0;
        for (int i = 0; i < 2000; i++) {
            SpacingProblem problem = random(random);
            Optional<Spacing> best = new EveryRow(problem).best();
            Optional<Spacing> found = SpacingSolver.solve(problem, plenty());
            assertEquals(best.isPresent(), found.isPresent(), problem::toString);
            if (best.isPresent()) {
                possible++;
                isAsGood(problem, best.get(), found.get());
            }
        }
        assertTrue(possible > 1000, "possible: " + possible);
    }

    private static void isAsGood(SpacingProblem problem, Spacing best, Spacing found) {
        assertEquals(best.byHand().size(), found.byHand().size(), problem::toString);
        assertEquals(best.deviation(), found.deviation(), SAME, problem::toString);
        assertEquals(best.squares(), found.squares(), SAME, problem::toString);
        assertEquals(problem.blockedAt(found.places()), found.byHand());
        assertTrue(found.places().containsAll(problem.meets()), problem::toString);
        for (int i = 1; i < found.places().size(); i++) {
            int gap = found.places().get(i) - found.places().get(i - 1);
            assertTrue(gap >= problem.least() && gap <= problem.widest(), problem::toString);
        }
    }

    private static SpacingProblem random(SplittableRandom random) {
        int count = random.nextInt(2, 7);
        int length = random.nextInt(12, 34);
        List<Integer> meets = new ArrayList<>();
        for (int i = random.nextInt(0, 3); i > 0; i--) {
            meets.add(random.nextInt(2, length - 2));
        }
        List<List<Zone>> blocked = new ArrayList<>();
        List<Zone> bulk = new ArrayList<>();
        for (int i = random.nextInt(0, 4); i > 0; i--) {
            int from = random.nextInt(0, length - 3);
            bulk.add(new Zone(from, from + random.nextInt(0, 5)));
        }
        for (int i = 0; i < count; i++) {
            blocked.add(random.nextInt(5) == 0 ? List.of() : bulk);
        }
        int first = random.nextInt(0, 3);
        int last = length - random.nextInt(0, 3);
        return new SpacingProblem(
                count,
                new Zone(first, first + random.nextInt(0, 3)),
                new Zone(last - random.nextInt(0, 3), last),
                random.nextInt(1, 3),
                random.nextInt(8, 40),
                meets,
                blocked);
    }
}
