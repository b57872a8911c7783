package secondbolt.tools;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The program at work in a Java of its own, which can be given little memory, asked to end, or
 * killed.
 */
public final class OwnJava {
    private OwnJava() {}

    /**
     * Starts a command of the program.
     *
     * @param folder the working folder
     * @param told the file that takes what it prints
     * @param options of Java
     * @param args the command
     */
    public static Process begun(Path folder, Path told, List<String> options, String... args) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-Djava.awt.headless=true", "-cp", classPath()));
        command.add("secondbolt.app.Main");
        command.addAll(List.of(args));
        try {
            return new ProcessBuilder(command)
                    .directory(folder.toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(told.toFile())
                    .start();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** That of the tests, from whatever folder it is read. */
    private static String classPath() {
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(path -> Path.of(path).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }
}
