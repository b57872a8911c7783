package secondbolt.lay.search;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntConsumer;

/**
 * Threads that do the same work several times at once; what comes of it does not depend on how many
 * they are.
 */
final class WorkerPool implements AutoCloseable {
    private final ExecutorService helpers;

    private WorkerPool(ExecutorService helpers) {
        this.helpers = helpers;
    }

    static WorkerPool of(int helpers) {
        return new WorkerPool(
                Executors.newFixedThreadPool(
                        Math.max(1, helpers),
                        work -> {
                            Thread thread = new Thread(work, "lay");
                            thread.setDaemon(true);
                            return thread;
                        }));
    }

    /** Does the work with every number from 0 to below the count at once, and waits for all. */
    void all(int count, IntConsumer work) {
        List<Future<?>> others = new ArrayList<>();
        for (int i = 1; i < count; i++) {
            int number = i;
            others.add(helpers.submit(() -> work.accept(number)));
        }
        work.accept(0);
        for (Future<?> other : others) {
            await(other);
        }
    }

    private static void await(Future<?> other) {
        try {
            other.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while laying", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("laying failed", e.getCause());
        }
    }

    @Override
    public void close() {
        helpers.shutdownNow();
    }
}
