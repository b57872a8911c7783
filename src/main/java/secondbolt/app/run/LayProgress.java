package secondbolt.app.run;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicReference;
import secondbolt.lay.search.SearchObserver;

/**
 * Tells how far the search for a lay is, on one line that is written over, where a person looks on;
 * and ends the search when she presses Ctrl-C, so that the best lay so far is used. Of searches
 * that run side by side one is told at a time, until it ends.
 */
public final class LayProgress implements SearchObserver {
    private static final int BAR = 20;
    private static final String CLEAR = "\r" + " ".repeat(60) + "\r";

    private final PrintWriter err;
    private final boolean isTold;
    private final AtomicReference<Thread> told = new AtomicReference<>();

    /**
     * Tells nothing yet.
     *
     * @param err where progress is told
     * @param isTold whether anybody looks on
     */
    public LayProgress(PrintWriter err, boolean isTold) {
        this.err = err;
        this.isTold = isTold;
    }

    @Override
    public boolean goOn(double share, double bestMm) {
        Thread own = Thread.currentThread();
        if (isTold && (told.get() == own || told.compareAndSet(null, own))) {
            boolean isOver = share >= 1;
            err.print(isOver ? CLEAR : line(share, bestMm));
            err.flush();
            if (isOver) {
                told.set(null);
            }
        }
        return !Interrupt.isAsked();
    }

    private static String line(double share, double bestMm) {
        int done = (int) Math.round(share * BAR);
        String best =
                bestMm > 0 ? String.format(Locale.ROOT, "best so far %.1f cm ", bestMm / 10) : "";
        return "\r  laying [" + "#".repeat(done) + ".".repeat(BAR - done) + "] " + best;
    }
}
