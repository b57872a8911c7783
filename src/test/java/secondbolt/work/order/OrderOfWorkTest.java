package secondbolt.work.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;

class OrderOfWorkTest {
    private static final List<Stage> STAGES = List.of(Stage.values());

    private static WorkStep step(String name, String... follows) {
        return step(Stage.SEWING, name, follows);
    }

    private static WorkStep step(Stage stage, String name, String... follows) {
        return Stream.of(follows)
                .reduce(
                        WorkStep.of(name, stage, name + "."),
                        (step, other) -> step.after(other, "It must."),
                        (a, b) -> b);
    }

    private static List<String> names(List<WorkStep> steps) {
        return steps.stream().map(WorkStep::name).toList();
    }

    private static List<String> sorted(WorkStep... steps) {
        return names(OrderOfWork.of(List.of(steps)));
    }

    @Test
    void putsEachStepBehindWhatItFollowsAndElseAsGiven() {
        assertEquals(
                List.of("wash", "cut", "interface", "buttonholes", "hem"),
                sorted(
                        step("wash"),
                        step("buttonholes", "interface"),
                        step("cut", "wash"),
                        step("interface", "cut"),
                        step("hem", "buttonholes")));
    }

    @Test
    void goesStageByStageWhateverTopicComesFirst() {
        assertEquals(
                List.of("prewash", "dye", "print", "cut", "seams", "buttons", "hem"),
                sorted(
                        step(Stage.HEMMING, "hem"),
                        step(Stage.CLOSING, "buttons"),
                        step(Stage.SEWING, "seams"),
                        step(Stage.CUTTING, "cut"),
                        step(Stage.PLANNING, "print"),
                        step(Stage.DYEING, "dye"),
                        step(Stage.PREPARING, "prewash")));
    }

    /**
     * Source: Text-Book on Domestic Art, apron: widths joined, sides hemmed, lower hem, gathered,
     * band.
     */
    @Test
    void putsAStraightHemRightBeforeTheGathersThatFollowIt() {
        assertEquals(
                List.of("widths", "hem", "gather", "band", "ties", "buttons"),
                sorted(
                        step("widths"),
                        step("gather", "widths", "hem"),
                        step("band", "gather"),
                        step("ties", "band"),
                        step(Stage.CLOSING, "buttons"),
                        step(Stage.HEMMING, "hem", "widths")));
    }

    @Test
    void waitsForNoStepThatNobodyContributes() {
        assertEquals(List.of("hem"), sorted(step("hem", "hang")));
    }

    /** Check value: hem before band, band before pleat, pleat before hem is an error; derived. */
    @Test
    void tellsACircleByTheNamesInIt() {
        List<WorkStep> steps =
                List.of(
                        step("wash"),
                        step("band", "hem"),
                        step("pleat", "band"),
                        step("hem", "pleat", "wash"));
        IllegalArgumentException circle =
                assertThrows(IllegalArgumentException.class, () -> OrderOfWork.of(steps));
        assertTrue(circle.getMessage().endsWith("band, pleat, hem"), circle.getMessage());
        assertEquals(
                Set.of("band", "pleat", "hem"),
                Set.copyOf(new StepGraph(steps).circle().stream().map(Link::later).toList()));
    }

    @Test
    void refusesTwoStepsOfOneName() {
        assertThrows(
                IllegalArgumentException.class,
                () -> OrderOfWork.of(List.of(step("hem"), step("hem"))));
    }

    /** Whatever the order they are given in, nothing stands before what it follows. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void holdsForStepsGivenInAnyOrder(long seed) {
        List<WorkStep> steps = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            steps.add(i < 3 ? step("s" + i) : step("s" + i, "s" + i / 2, "s" + (i - 1)));
        }
        Collections.shuffle(steps, new Random(seed));
        Set<String> done = new HashSet<>();
        for (WorkStep next : OrderOfWork.of(steps)) {
            assertTrue(
                    done.containsAll(next.follows().stream().map(WorkStep.Follows::step).toList())
                            || next.name().matches("s[012]"));
            done.add(next.name());
        }
        assertEquals(20, done.size());
    }

    /**
     * Against all permutations of six steps with any rules at all: it finds an order exactly if one
     * of them is one, and then that is one of them.
     */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18})
    void agreesWithTryingEveryPermutation(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 25; round++) {
            List<WorkStep> steps = anySteps(random);
            Set<List<String>> right = new HashSet<>();
            permutations(steps, new ArrayList<>(), right);
            if (right.isEmpty()) {
                assertTrue(!new StepGraph(steps).circle().isEmpty());
                assertThrows(IllegalArgumentException.class, () -> OrderOfWork.of(steps));
            } else {
                assertEquals(List.of(), new StepGraph(steps).circle());
                assertTrue(right.contains(names(OrderOfWork.of(steps))));
            }
        }
    }

    private static List<WorkStep> anySteps(SplittableRandom random) {
        List<WorkStep> steps = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Stage stage = STAGES.get(random.nextInt(STAGES.size()));
            WorkStep step = step(stage, "s" + i);
            for (int j = 0; j < 6; j++) {
                step = j != i && random.nextInt(6) == 0 ? step.after("s" + j, "It must.") : step;
            }
            steps.add(step);
        }
        return steps;
    }

    /** All orders in which nothing stands before what it follows, by trying each. */
    private static void permutations(
            List<WorkStep> left, List<String> before, Set<List<String>> right) {
        if (left.isEmpty()) {
            right.add(List.copyOf(before));
        }
        for (WorkStep next : left) {
            boolean stands =
                    next.follows().stream().map(WorkStep.Follows::step).allMatch(before::contains);
            if (stands) {
                List<WorkStep> others = new ArrayList<>(left);
                others.remove(next);
                before.add(next.name());
                permutations(others, before, right);
                before.remove(before.size() - 1);
            }
        }
    }
}
