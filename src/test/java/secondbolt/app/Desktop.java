package secondbolt.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A working folder to run commands in, with what they print. */
public final class Desktop {
    /** A small sound project. */
    public static final String APRON =
            """
                title: Apron
                units: cm
                cloth:
                  sheet:
                    size: [160, 250]
                    weight: 140 g/m2
                    trim: {left: 1, right: 1, top: 4, bottom: 2}
                    flaws:
                      - {what: stain, at: [40, 60], round: 6}
                      - {what: worn, at: [80, 150], size: [30, 40]}
                    clear: 1
                closures:
                  back:
                    length: 40
                    extension: 2
                    buttons: 3
                    button: {across: 15 mm, thick: 3 mm}
                    first: 2
                    last: 8
                    holes: level
                    laps: right over left
                """;

    private final Path folder;
    private String out = "";
    private String err = "";

    /** In a folder that is there. */
    public Desktop(Path folder) {
        this.folder = folder;
    }

    /** The working folder. */
    public Path folder() {
        return folder;
    }

    /** With a file of text, in UTF-8. */
    public Desktop with(String path, String text) {
        return with(path, text.getBytes(StandardCharsets.UTF_8));
    }

    /** With a file of bytes. */
    public Desktop with(String path, byte[] bytes) {
        try {
            Path file = folder.resolve(path);
            Files.createDirectories(file.getParent());
            Files.write(file, bytes);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Runs a command; its exit code. */
    public int run(String... args) {
        StringWriter outText = new StringWriter();
        StringWriter errText = new StringWriter();
        int code =
                new Secondbolt(folder, new PrintWriter(outText), new PrintWriter(errText))
                        .run(args);
        out = outText.toString();
        err = errText.toString();
        return code;
    }

    /** What the last command printed. */
    public String out() {
        return out;
    }

    /** What the last command told of mistakes. */
    public String err() {
        return err;
    }

    /** The text of a file of the folder. */
    public String read(String path) {
        try {
            return Files.readString(folder.resolve(path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
