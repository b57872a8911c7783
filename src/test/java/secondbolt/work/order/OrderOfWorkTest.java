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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import secondbolt.task.Stage;
import secondbolt.task.WorkStep;

class OrderOfWorkTest {
    private static WorkStep step(String name, String... follows) {
        return Stream.of(follows)
                .reduce(
                        WorkStep.of(name, Stage.SEWING, name + "."),
                        (step, other) -> step.after(other, "It must."),
                        (a, b) -> b);
    }

    private static List<String> names(List<WorkStep> steps) {
        return steps.stream().map(WorkStep::name).toList();
    }

    @Test
    void putsEachStepBehindWhatItFollowsAndElseAsGiven() {
        assertEquals(
                List.of("wash", "cut", "interface", "buttonholes", "hem"),
                names(
                        OrderOfWork.of(
                                List.of(
                                        step("wash"),
                                        step("buttonholes", "interface"),
                                        step("cut", "wash"),
                                        step("interface", "cut"),
                                        step("hem", "buttonholes")))));
    }

    @Test
    void waitsForNoStepThatNobodyContributes() {
        assertEquals(List.of("hem"), names(OrderOfWork.of(List.of(step("hem", "hang")))));
    }

    @Test
    void tellsACircleByTheNamesInIt() {
        IllegalArgumentException circle =
                assertThrows(
                        IllegalArgumentException.class,
                        () ->
                                OrderOfWork.of(
                                        List.of(step("wash"), step("a", "b"), step("b", "a"))));
        assertTrue(circle.getMessage().endsWith("a, b"), circle.getMessage());
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
}
