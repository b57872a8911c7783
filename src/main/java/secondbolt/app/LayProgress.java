package secondbolt.app;

import java.io.PrintWriter;
import java.util.Locale;
import secondbolt.lay.search.Watch;

/**
 * Tells how far the search for a lay is, on one line that is written over, where a person looks on;
 * and ends the search when she presses Ctrl-C, so that the best lay so far is used.
 *
 * @param err where progress is told
 * @param isTold whether anybody looks on
 */
record LayProgress(PrintWriter err, boolean isTold) implements Watch {
    private static final int BAR = 20;

    @Override
    public boolean goOn(double share, double bestMm) {
        if (isTold) {
            int done = (int) Math.round(share * BAR);
            err.print(
                    "\r  laying ["
                            + "#".repeat(done)
                            + ".".repeat(BAR - done)
                            + "] "
                            + (bestMm > 0
                                    ? String.format(
                                            Locale.ROOT, "best so far %.1f cm ", bestMm / 10)
                                    : "")
                            + (share >= 1 ? "\r" + " ".repeat(60) + "\r" : ""));
            err.flush();
        }
        return !Interrupt.isAsked();
    }
}
