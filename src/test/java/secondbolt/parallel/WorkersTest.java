package secondbolt.parallel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Side by side comes out as one after the other. */
class WorkersTest {
    @Test
    void givesEachTaskItsOwnResult() {
        try (Workers workers = new Workers()) {
            List<Supplier<Integer>> begun =
                    IntStream.range(0, 200).mapToObj(i -> workers.begin(() -> i * i)).toList();
            for (int i = 0; i < begun.size(); i++) {
                assertEquals(i * i, begun.get(i).get());
            }
        }
    }

    @Test
    void throwsWhatATaskThrewWhereItsResultIsAskedFor() {
        RuntimeException fault = new IllegalStateException("a fault");
        Error error = new StackOverflowError("an error");
        try (Workers workers = new Workers()) {
            Supplier<String> broken = workers.begin(() -> thrown(fault));
            Supplier<String> worse = workers.begin(() -> thrown(error));
            Supplier<String> whole = workers.begin(() -> "whole");
            assertEquals("whole", whole.get());
            assertSame(fault, assertThrows(RuntimeException.class, broken::get));
            assertSame(error, assertThrows(Error.class, worse::get));
        }
    }

    private static String thrown(RuntimeException fault) {
        throw fault;
    }

    private static String thrown(Error error) {
        throw error;
    }

    @Test
    void letsATaskWaitForOneBegunBeforeIt() {
        try (Workers workers = new Workers()) {
            Supplier<Integer> one = workers.begin(() -> 1);
            Supplier<Integer> two = workers.begin(() -> one.get() + 1);
            assertEquals(3, workers.begin(() -> two.get() + 1).get());
        }
    }
}
