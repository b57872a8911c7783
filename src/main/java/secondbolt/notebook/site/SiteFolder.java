package secondbolt.notebook.site;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import secondbolt.disk.BarredException;
import secondbolt.disk.BarredException.Bar;
import secondbolt.disk.Home;
import secondbolt.file.json.JsonReader;

/**
 * The folder of a site as it stands, whoever put what into it.
 *
 * @param root its absolute path
 */
record SiteFolder(Path root) {
    private static final long LARGEST_BYTES = 200_000_000;
    private static final String WORKINGS = "workings.json";
    private static final String SHEETS = "sheets";
    private static final String FILE = "file";

    private static final List<String> WHOLE =
            List.of(
                    "index.html",
                    "project-file.html",
                    "project-file.schema.json",
                    "look/style.css",
                    "look/SourceSans3-Regular.woff2",
                    "look/SourceSans3-Semibold.woff2",
                    "look/SourceSans3-LICENSE.md");

    /** The bytes of a plain file of the site; nothing if there is none. */
    Optional<byte[]> bytes(String path) throws IOException {
        if (!SiteFile.isSafe(path)) {
            return Optional.empty();
        }
        Path file = root.resolve(path);
        try {
            return isBehindLink(file) || Home.barAt(file).isPresent()
                    ? Optional.empty()
                    : Optional.of(new Home(root).read(file, LARGEST_BYTES));
        } catch (BarredException e) {
            if (e.bar() == Bar.CLOSED || e.bar() == Bar.LARGE) {
                throw new FileSystemException(file.toString(), null, e.bar().words());
            }
            return Optional.empty();
        }
    }

    Optional<String> text(String path) throws IOException {
        return bytes(path).map(bytes -> new String(bytes, StandardCharsets.UTF_8));
    }

    /** Whether a folder between the site's and a file is a link. */
    boolean isBehindLink(Path file) {
        for (Path up = file.getParent(); !up.equals(root); up = up.getParent()) {
            if (Files.isSymbolicLink(up)) {
                return true;
            }
        }
        return false;
    }

    /** The paths of the files that earlier runs made; of a list that is spoilt, what is found. */
    SortedSet<String> listed() throws IOException {
        Optional<String> contents = text(Contents.PATH);
        return contents.filter(Contents::isVersioned).isPresent()
                ? Contents.paths(contents.get())
                : found();
    }

    /** What bears the program's mark, where nothing tells what there should be. */
    private SortedSet<String> found() throws IOException {
        SortedSet<String> asked = new TreeSet<>(WHOLE);
        for (String folder : folders()) {
            asked.add(folder + "/index.html");
            asked.add(folder + "/" + WORKINGS);
            text(folder + "/" + WORKINGS)
                    .filter(Contents::isVersioned)
                    .flatMap(JsonReader::readObject)
                    .map(workings -> workings.get(SHEETS))
                    .ifPresent(sheets -> addSheets(asked, folder, sheets));
        }
        SortedSet<String> found = new TreeSet<>();
        for (String path : asked) {
            if (isMarked(path)) {
                found.add(path);
            }
        }
        return found;
    }

    private List<String> folders() throws IOException {
        if (!Files.isDirectory(root)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(root)) {
            return all.filter(one -> Files.isDirectory(one, LinkOption.NOFOLLOW_LINKS))
                    .map(one -> one.getFileName().toString())
                    .filter(SiteFile::isSafe)
                    .sorted()
                    .toList();
        }
    }

    private static void addSheets(SortedSet<String> asked, String folder, Object sheets) {
        if (sheets instanceof List<?> list) {
            for (Object sheet : list) {
                if (sheet instanceof Map<?, ?> map && map.get(FILE) instanceof String s) {
                    asked.add(folder + "/" + s);
                }
            }
        }
    }

    /** Whether a file is there and bears the program's mark. */
    boolean isMarked(String path) throws IOException {
        return bytes(path).filter(bytes -> MadeMark.isOn(path, bytes)).isPresent();
    }

    /** Whether the list of contents may be replaced, be it spoilt. */
    boolean isContentsOurs() throws IOException {
        Optional<byte[]> contents = bytes(Contents.PATH);
        return contents.isEmpty()
                || contents.get().length == 0
                || isMarked(Contents.PATH)
                || isMarked("index.html");
    }

    /** Refuses what stands where a file belongs and is no file, and what leads elsewhere. */
    void refuseWhatIsInTheWay(Path target) throws IOException {
        for (Path up = target.getParent(); !up.equals(root); up = up.getParent()) {
            if (Files.isSymbolicLink(up)) {
                throw refused(up, "a link stands where a folder of the site belongs");
            }
            if (Files.exists(up) && !Files.isDirectory(up)) {
                throw refused(up, "a file stands where a folder of the site belongs");
            }
        }
        Optional<Bar> bar = Home.barAt(target);
        if (bar.isPresent()) {
            String words = bar.get().words();
            throw refused(target, words + " stands where a file of the site belongs");
        }
    }

    /** Deletes the folders from one upwards that hold nothing. */
    void removeEmptyFolders(Path from) throws IOException {
        for (Path up = from; !up.equals(root); up = up.getParent()) {
            try {
                Files.delete(up);
            } catch (DirectoryNotEmptyException e) {
                return;
            }
        }
    }

    static FileSystemException refused(Path path, String reason) {
        return new FileAlreadyExistsException(path.toString(), null, reason);
    }

    static FileSystemException someoneElses(Path path) {
        return refused(path, "not made by Secondbolt, so it is left alone; move it away first");
    }

    /** The message of an exception of files is often the bare path; this says what it is about. */
    static String words(IOException e, Path at) {
        if (e instanceof FileSystemException refused) {
            String where = refused.getFile() == null ? at.toString() : refused.getFile();
            String why = refused.getReason();
            return where + ": " + (why == null ? plain(e) : why);
        }
        return at + ": " + e.getMessage();
    }

    private static String plain(IOException e) {
        return switch (e.getClass().getSimpleName()) {
            case "AccessDeniedException" -> "may not be written or read";
            case "NoSuchFileException" -> "is not there";
            case "FileAlreadyExistsException" ->
                    "not made by Secondbolt, so it is left alone; move it away first";
            case "DirectoryNotEmptyException" -> "a folder that is not empty";
            default -> "cannot be written or read";
        };
    }

    /** A name with letters that the machine's settings do not know. */
    static String words(InvalidPathException e) {
        return e.getInput()
                + ": a name that this machine cannot give a file; run the program with"
                + " LC_ALL=C.UTF-8";
    }
}
