package secondbolt.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import secondbolt.tools.OwnJava;

/**
 * The program at work in a JVM of its own, which can be killed.
 *
 * @param process the JVM
 * @param told the file that takes what it prints
 */
record Started(Process process, Path told) {
    private static final long LONGEST_SECONDS = 120;

    /**
     * Starts a command.
     *
     * @param folder the working folder
     * @param told the file that takes what it prints, outside of that folder
     */
    static Started in(Path folder, Path told, String... args) {
        return new Started(
                OwnJava.begun(folder, told, List.of("-XX:TieredStopAtLevel=1"), args), told);
    }

    /**
     * Waits so long and kills it then, at once and without a word to it.
     *
     * @return whether it was still at work
     */
    boolean isKilledAfter(long nanoseconds) {
        boolean isEnded = isEndedWithin(nanoseconds);
        process.destroyForcibly();
        isEndedWithin(TimeUnit.SECONDS.toNanos(LONGEST_SECONDS));
        return !isEnded;
    }

    /** Waits until a file is there, or the program has ended. */
    void awaitFile(Path file) {
        while (process.isAlive() && !Files.exists(file)) {
            Thread.onSpinWait();
        }
    }

    /** Waits so long, or until it has ended. */
    void await(long nanoseconds) {
        isEndedWithin(nanoseconds);
    }

    /** Waits for its end; its exit code. */
    int ended() {
        if (!isEndedWithin(TimeUnit.SECONDS.toNanos(LONGEST_SECONDS))) {
            process.destroyForcibly();
            throw new IllegalStateException("no end of " + process.info());
        }
        return process.exitValue();
    }

    private boolean isEndedWithin(long nanoseconds) {
        try {
            return process.waitFor(nanoseconds, TimeUnit.NANOSECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            process.destroyForcibly();
            throw new IllegalStateException("interrupted", e);
        }
    }

    /** What it printed. */
    String text() {
        try {
            return Files.readString(told);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
