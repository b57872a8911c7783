package secondbolt.app;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Where the program starts. */
public final class Main {
    private Main() {}

    /** Runs a command and exits with its code: 0 done, 1 mistakes found or refused, 2 usage. */
    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        Interrupt.install();
        System.exit(run(args, out, err));
    }

    private static int run(String[] args, PrintWriter out, PrintWriter err) {
        try {
            return new Secondbolt(Path.of(""), out, err).run(args);
        } finally {
            out.flush();
            err.flush();
            // Also after a fault of the machine, so that the program's end is not awaited.
            Interrupt.done();
        }
    }
}
