package secondbolt.parallel;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/**
 * Works on several tasks side by side, one on each processor. Whoever takes the results in a fixed
 * order gets the same as if the tasks were done one after the other: tasks share nothing that
 * changes.
 */
public final class Workers implements AutoCloseable {
    private static final long LOOK_MILLIS = 200;

    private final ExecutorService pool;

    /** What ended a thread between two tasks, where no task could tell of it. */
    private final AtomicReference<Throwable> lost = new AtomicReference<>();

    /** One thread on each processor. */
    public Workers() {
        this(Runtime.getRuntime().availableProcessors());
    }

    /**
     * So many threads.
     *
     * @param threads 1 or more
     */
    public Workers(int threads) {
        this.pool = Executors.newFixedThreadPool(threads, this::thread);
    }

    private Thread thread(Runnable work) {
        Thread thread = new Thread(work, "worker");
        // A task that nobody waits for any more does not keep the program from ending.
        thread.setDaemon(true);
        thread.setUncaughtExceptionHandler((ended, failure) -> lost.compareAndSet(null, failure));
        return thread;
    }

    /**
     * Begins a task as soon as a processor is free, those begun first before others. The result is
     * waited for where it is asked for; what the task throws is thrown there.
     */
    public <T> Supplier<T> begin(Supplier<T> task) {
        Future<T> begun = pool.submit(task::get);
        return () -> result(begun);
    }

    /**
     * Does the work with every number from 0 to below the count, one of them on the thread that
     * asks, and waits for all; what any of them throws is thrown here.
     */
    public void all(int count, IntConsumer work) {
        List<Future<?>> others = new ArrayList<>();
        for (int i = 1; i < count; i++) {
            int number = i;
            others.add(pool.submit(() -> work.accept(number)));
        }
        work.accept(0);
        for (Future<?> other : others) {
            result(other);
        }
    }

    private <T> T result(Future<T> begun) {
        try {
            return waited(begun);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            // A supplier throws nothing else.
            throw (RuntimeException) e.getCause();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while waiting for a task", e);
        }
    }

    /** A task whose thread ended for want of memory is never done: then that is thrown. */
    private <T> T waited(Future<T> begun) throws InterruptedException, ExecutionException {
        while (true) {
            try {
                return begun.get(LOOK_MILLIS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException e) {
                if (lost.get() != null) {
                    throw new ExecutionException(lost.get());
                }
            }
        }
    }

    /** Takes no more tasks; those begun that nobody asked for are finished in the background. */
    @Override
    public void close() {
        pool.shutdown();
    }
}
