package secondbolt.app;

import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.TypeConversionException;
import secondbolt.app.run.Memory;
import secondbolt.app.terminal.Terminal;
import secondbolt.fault.Fault;

/** The commands, with the folder and the streams they work on. */
@Command(
        name = "secondbolt",
        versionProvider = Secondbolt.Version.class,
        mixinStandardHelpOptions = true,
        description = {
            "Makes a project notebook, with sheets true to scale, from the project files of a",
            "maker who turns worn household textiles into garments.",
            ""
        },
        footer = {
            "",
            "Without a command it makes the notebook of `projects` into `site`.",
            "Exit codes: 0 done, 1 mistakes found or work refused, 2 the command was not",
            "understood, 130 done with the best there was when Ctrl-C was pressed."
        })
public final class Secondbolt implements Runnable {
    /** Done. */
    static final int DONE = 0;

    /** Mistakes were found, or the machine refused. */
    static final int REFUSED = 1;

    /** The command was not understood. */
    static final int USAGE = 2;

    private final Workplace workplace;

    /**
     * A program at work in a folder.
     *
     * @param folder the working folder; paths are read from it
     * @param out for what was asked for
     * @param err for mistakes and progress
     */
    public Secondbolt(Path folder, PrintWriter out, PrintWriter err) {
        this.workplace = new Workplace(folder, new Terminal(out), new Terminal(err));
    }

    /** Runs a command and returns its exit code; nothing is thrown. */
    public int run(String... args) {
        CommandLine line = new CommandLine(this);
        line.addSubcommand(new NotebookCommand(workplace));
        line.addSubcommand(new SheetCommand(workplace));
        line.addSubcommand(new CheckCommand(workplace));
        line.addSubcommand(new PinCommand(workplace));
        line.addSubcommand(new KeysCommand(workplace));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.registerConverter(Path.class, Secondbolt::path);
        line.setOut(workplace.out());
        line.setErr(workplace.err());
        line.setExecutionExceptionHandler((fault, command, parsed) -> tell(fault));
        try {
            return line.execute(withDefault(args));
        } catch (OutOfMemoryError | StackOverflowError e) {
            // Whatever it was for, the notebook that stands is whole, and a sentence is due.
            workplace.err().println(tooMuch(e));
            return REFUSED;
        }
    }

    private static Path path(String typed) {
        try {
            return Path.of(typed);
        } catch (InvalidPathException e) {
            throw new TypeConversionException(unspelt(e));
        }
    }

    private static String unspelt(InvalidPathException e) {
        return "`"
                + e.getInput()
                + "` has letters that cannot stand in a file's name with this machine's settings;"
                + " run the program with LC_ALL=C.UTF-8";
    }

    /** Options alone are options of the default command. */
    private static String[] withDefault(String... args) {
        List<String> own = List.of("-h", "--help", "-V", "--version");
        boolean isDefault = args.length == 0 || (args[0].startsWith("-") && !own.contains(args[0]));
        if (!isDefault) {
            return args;
        }
        List<String> all = new ArrayList<>(List.of("notebook"));
        all.addAll(List.of(args));
        return all.toArray(String[]::new);
    }

    private static String tooMuch(Error e) {
        return e instanceof OutOfMemoryError
                ? Memory.tooLittle()
                : "secondbolt: more to work out than this program can follow: something in it goes"
                        + " too deep. Nothing of the last good notebook was lost.";
    }

    private static String failed(Exception fault) {
        return "a fault of the program, not of your file: it failed at "
                + (fault instanceof Fault known ? String.join(", ", known.at()) : "this command")
                + "; please report it with the project file.";
    }

    private int tell(Exception fault) {
        String told =
                fault instanceof UncheckedIOException
                        ? fault.getMessage()
                        : fault instanceof InvalidPathException invalid
                                ? unspelt(invalid)
                                : failed(fault);
        workplace.err().println("secondbolt: " + told);
        workplace.err().println("Nothing of the last good notebook was lost.");
        return REFUSED;
    }

    /** Never called: without a command the notebook is made. */
    @Override
    public void run() {
        throw new IllegalStateException("a command is always given");
    }

    /** The version of the program. */
    static final class Version implements IVersionProvider {
        /** As in the jar's pages. */
        static final String NUMBER = "0.1.0";

        @Override
        public String[] getVersion() {
            return new String[] {"secondbolt " + NUMBER};
        }
    }
}
