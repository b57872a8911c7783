package secondbolt.file.source;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import secondbolt.disk.BarredException;
import secondbolt.disk.BarredException.Bar;
import secondbolt.disk.Home;

/**
 * A maker's file as text.
 *
 * @param name the file as messages name it
 * @param text its whole text
 * @param lines its lines
 * @param folder where it lies, for files that it names; nothing if it is at hand as text only
 */
public record SourceFile(String name, String text, List<String> lines, Optional<Path> folder) {
    /** A project file is a few pages; more is some other file. */
    private static final long LARGEST_BYTES = 1_000_000;

    private static final String RIGHT = "plain text: a project file in YAML, a drawing in SVG";
    private static final String NO_SIBLING = "which is no file beside the project";

    private static final Pattern LINE_END = Pattern.compile("\r\n|\n|\r");

    /** Copies the lines. */
    public SourceFile {
        lines = List.copyOf(lines);
    }

    /** A source that is at hand as text. */
    public static SourceFile of(String name, String text) {
        String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
        return new SourceFile(name, body, List.of(LINE_END.split(body, -1)), Optional.empty());
    }

    /**
     * Reads a file that this one names, from its own folder or one below it.
     *
     * @param place where it is named, for the mistake if it cannot be read
     */
    public Optional<SourceFile> sibling(String relative, Place place, Mistakes mistakes) {
        if (folder.isEmpty()) {
            return Optional.empty();
        }
        Path home = folder.get().toAbsolutePath().normalize();
        try {
            Path path = home.resolve(relative).normalize();
            if (!path.startsWith(home)) {
                throw new NoSuchFileException(relative);
            }
            byte[] bytes = new Home(home).read(path, LARGEST_BYTES);
            return decode(besideName(relative), bytes, mistakes).map(f -> f.in(path));
        } catch (BarredException e) {
            boolean isMissing = e.bar() == Bar.MISSING;
            return noSibling(
                    "`" + relative + "`, " + (isMissing ? NO_SIBLING : "which is " + words(e)),
                    place,
                    mistakes);
        } catch (IOException | InvalidPathException e) {
            return noSibling("`" + relative + "`, " + NO_SIBLING, place, mistakes);
        }
    }

    private Optional<SourceFile> noSibling(String found, Place place, Mistakes mistakes) {
        mistakes.add(
                mistake(
                        place,
                        found,
                        "the path of a file in the project's folder, such as pieces/pocket.svg"));
        return Optional.empty();
    }

    private String besideName(String other) {
        return name.substring(0, name.lastIndexOf('/') + 1) + other;
    }

    private SourceFile in(Path path) {
        return new SourceFile(name, text, lines, Optional.of(path.toAbsolutePath().getParent()));
    }

    /** Reads a file of this name beside this one, if there is one or something else of its name. */
    public Optional<SourceFile> beside(String other, Mistakes mistakes) {
        return folder.map(home -> home.resolve(other))
                .filter(Home::isTaken)
                .flatMap(path -> read(path, besideName(other), mistakes));
    }

    /**
     * Reads a file. No link is followed out of the folder it lies in.
     *
     * @param path where it lies
     * @param name the file as messages shall name it
     * @param mistakes told what keeps it from being read
     */
    public static Optional<SourceFile> read(Path path, String name, Mistakes mistakes) {
        Path file = path.toAbsolutePath();
        try {
            byte[] bytes = new Home(file.getParent()).read(file, LARGEST_BYTES);
            return decode(name, bytes, mistakes).map(f -> f.in(file));
        } catch (BarredException e) {
            return refused(mistakes, name, words(e), right(e.bar()));
        } catch (IOException e) {
            return refused(mistakes, name, Bar.CLOSED.words(), right(Bar.CLOSED));
        }
    }

    private static String words(BarredException e) {
        return e.bar() == Bar.LARGE ? "a file of more than 1 MB" : e.bar().words();
    }

    private static String right(Bar bar) {
        return switch (bar) {
            case MISSING -> "the path of a project file";
            case FOLDER, DEVICE -> "a project file (YAML)";
            case LARGE -> "a project file of some pages";
            case LINK, BROKEN_LINK, LEADS_OUT -> "the file itself, in the project's folder";
            case CLOSED -> "one you may read";
        };
    }

    private static Optional<SourceFile> decode(String name, byte[] bytes, Mistakes mistakes) {
        for (byte b : bytes) {
            if (b == 0) {
                return refused(
                        mistakes,
                        name,
                        isUtf16(bytes) ? "letters in UTF-16" : "a binary file",
                        isUtf16(bytes) ? "the file saved as UTF-8" : RIGHT);
            }
        }
        try {
            String text =
                    StandardCharsets.UTF_8
                            .newDecoder()
                            .onMalformedInput(CodingErrorAction.REPORT)
                            .decode(ByteBuffer.wrap(bytes))
                            .toString();
            return Optional.of(of(name, text));
        } catch (CharacterCodingException e) {
            int line = lineOfFirstBadByte(bytes);
            mistakes.add(
                    new Mistake(
                            new Place(name, line, 1),
                            "letters that are not UTF-8",
                            "the file saved as UTF-8",
                            ""));
            return Optional.empty();
        }
    }

    /** Whether it begins with the mark of the order of its bytes. */
    private static boolean isUtf16(byte[] bytes) {
        int mark = bytes.length < 2 ? 0 : ((bytes[0] & 0xFF) << 8) | (bytes[1] & 0xFF);
        return mark == 0xFEFF || mark == 0xFFFE;
    }

    private static int lineOfFirstBadByte(byte[] bytes) {
        String lenient = new String(bytes, StandardCharsets.UTF_8);
        int bad = Math.max(0, lenient.indexOf('\uFFFD'));
        return 1 + (int) lenient.substring(0, bad).chars().filter(c -> c == '\n').count();
    }

    private static Optional<SourceFile> refused(
            Mistakes mistakes, String name, String found, String right) {
        mistakes.add(new Mistake(Place.beginningOf(name), found, right, ""));
        return Optional.empty();
    }

    /** A mistake in this file, shown with its line; in another one it is told without. */
    public Mistake mistake(Place place, String found, String right) {
        boolean isHere = place.file().equals(name) && place.line() <= lines.size();
        String line = isHere ? lines.get(place.line() - 1) : "";
        return new Mistake(place, found, right, line);
    }
}
