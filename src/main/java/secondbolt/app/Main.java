package secondbolt.app;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import secondbolt.app.run.Interrupt;
import secondbolt.app.run.LastWords;

/** Where the program starts. */
public final class Main {
    private Main() {}

    /**
     * Runs a command and exits with its code: 0 done, 1 mistakes found or refused, 2 usage, 130
     * done with the best there was when Ctrl-C was pressed.
     */
    public static void main(String[] args) {
        LastWords last = new LastWords();
        try {
            System.exit(run(args));
        } catch (OutOfMemoryError e) {
            // There may be none left to tell of it, for others are still at work.
            last.say(Secondbolt.REFUSED);
        }
    }

    private static int run(String... args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        Interrupt.install(
                () -> err.println("\nEnding with the best so far; Ctrl-C once more ends at once."));
        int code = new Secondbolt(Path.of(""), out, err).run(args);
        out.flush();
        err.flush();
        return code == Secondbolt.DONE && Interrupt.isAsked() ? Interrupt.ENDED : code;
    }
}
