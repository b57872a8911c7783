package secondbolt.app;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * What Ctrl-C means: searches end with the best they have, the notebook is written with it, and
 * then the program ends. A second Ctrl-C, or half a minute, ends it at once.
 */
final class Interrupt {
    private static final AtomicBoolean ASKED = new AtomicBoolean();
    private static final CountDownLatch DONE = new CountDownLatch(1);
    private static final long PATIENCE_SECONDS = 30;

    private Interrupt() {}

    /** Waits at the program's end until the work is done. */
    static void install() {
        Runtime.getRuntime().addShutdownHook(new Thread(Interrupt::await, "interrupt"));
    }

    private static void await() {
        ASKED.set(true);
        try {
            DONE.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** The work is done. */
    static void done() {
        DONE.countDown();
    }

    static boolean isAsked() {
        return ASKED.get();
    }
}
