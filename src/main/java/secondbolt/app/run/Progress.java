package secondbolt.app.run;

import java.io.PrintWriter;

/** Says what is at work, once work takes longer than a second. */
public final class Progress {
    private static final long PATIENCE_NANOS = 1_000_000_000L;

    private final PrintWriter to;
    private final boolean quiet;
    private final long began = System.nanoTime();

    /**
     * Begins to count.
     *
     * @param quiet whether nothing is told
     */
    public Progress(PrintWriter to, boolean quiet) {
        this.to = to;
        this.quiet = quiet;
    }

    /** Tells what is at work now. */
    public void step(String what, int number, int of) {
        if (!quiet && System.nanoTime() - began > PATIENCE_NANOS) {
            to.println(what + " (" + number + " of " + of + ") …");
        }
    }
}
