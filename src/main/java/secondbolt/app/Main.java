package secondbolt.app;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import secondbolt.app.run.Interrupt;

/** Where the program starts. */
public final class Main {
    private Main() {}

    /**
     * Runs a command and exits with its code: 0 done, 1 mistakes found or refused, 2 usage, 130
     * done with the best there was when Ctrl-C was pressed.
     */
    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        Interrupt.install(
                () -> err.println("\nEnding with the best so far; Ctrl-C once more ends at once."));
        int code = new Secondbolt(Path.of(""), out, err).run(args);
        out.flush();
        err.flush();
        System.exit(code == Secondbolt.DONE && Interrupt.isAsked() ? Interrupt.ENDED : code);
    }
}
