package secondbolt.notebook.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import secondbolt.disk.AtomicFile;

/**
 * Puts a site into a folder. Only files whose bytes changed are written; each is first written in
 * full beside its place and moved there when all are, so that a run that fails on a full disk
 * leaves the old site as it was, and one that is killed leaves every file whole.
 *
 * <p>Files of an earlier run that are no longer made are deleted, but for those that the new list
 * of contents keeps. A file that no run made is never overwritten or deleted, and no link is
 * followed out of the folder.
 */
public final class SiteWriter {
    /** Lists what a run is about to write; it lies in the site only while one is at work. */
    public static final String JOURNAL = ".unfinished.json";

    /**
     * What a run did.
     *
     * @param written the paths of files written, in that order
     * @param deleted the paths of files deleted
     * @param unchanged how many files were right already
     */
    public record Written(List<String> written, List<String> deleted, int unchanged) {
        /** Copies the lists. */
        public Written {
            written = List.copyOf(written);
            deleted = List.copyOf(deleted);
        }
    }

    private final Path root;
    private final List<SiteFile> files;
    private final SortedSet<String> own;
    private final List<Path> parts = new ArrayList<>();
    private final List<Path> newFolders = new ArrayList<>();
    private boolean isJournalNeeded;

    private SiteWriter(Path root, List<SiteFile> files) {
        this.root = root;
        this.files = files;
        this.own = new TreeSet<>();
    }

    /**
     * Writes a site.
     *
     * @param out its folder; made if it is not there
     * @param files in the order in which they are put in place, so that a page stands behind what
     *     it links to; the last is the list of {@link Contents}
     * @throws UncheckedIOException with the path, if the machine refuses or a file of someone else
     *     is in the way; every file of the old site is then whole
     * @throws IllegalArgumentException if two files share a path or the list of contents is missing
     */
    public static Written write(Path out, List<SiteFile> files) {
        check(files);
        Path folder = out.toAbsolutePath().normalize();
        SiteWriter writer = new SiteWriter(folder, files);
        try {
            return writer.write();
        } catch (IOException e) {
            throw new UncheckedIOException(words(e, folder), e);
        } catch (InvalidPathException e) {
            String words = e.getInput() + ": a name that this machine cannot give a file";
            throw new UncheckedIOException(words, new IOException(words, e));
        }
    }

    /** The text of a file of the site as it now stands, if it is there. */
    public static Optional<String> textIn(Path out, String path) {
        Path file = out.resolve(path);
        try {
            return SiteFile.isSafe(path) && Files.isRegularFile(file)
                    ? Optional.of(new String(Files.readAllBytes(file), StandardCharsets.UTF_8))
                    : Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(words(e, file), e);
        }
    }

    /** The paths of all files that earlier runs made and left in the site. */
    public static SortedSet<String> pathsIn(Path out) {
        return Contents.paths(textIn(out, Contents.PATH).orElse(""));
    }

    private static void check(List<SiteFile> files) {
        Set<String> paths = new HashSet<>();
        for (SiteFile file : files) {
            if (!paths.add(file.path())) {
                throw new IllegalArgumentException("made twice: " + file.path());
            }
        }
        if (files.isEmpty() || !files.get(files.size() - 1).path().equals(Contents.PATH)) {
            throw new IllegalArgumentException("the last file must be " + Contents.PATH);
        }
    }

    /** The message of an exception of files is often the bare path; this says what it is about. */
    private static String words(IOException e, Path at) {
        if (e instanceof FileSystemException refused) {
            String where = refused.getFile() == null ? at.toString() : refused.getFile();
            String why = refused.getReason();
            return where + ": " + (why == null ? e.getClass().getSimpleName() : why);
        }
        return at + ": " + e.getMessage();
    }

    private Written write() throws IOException {
        try {
            makeFolder(root);
            own.addAll(Contents.paths(textIn(root, Contents.PATH).orElse("")));
            Optional<String> journal = textIn(root, JOURNAL);
            isJournalNeeded = journal.isPresent();
            own.addAll(Contents.paths(journal.orElse("")));
            removeLeftovers();
            List<SiteFile> changed = changed();
            SortedSet<String> stale = stale();
            if (!changed.isEmpty() || !stale.isEmpty()) {
                writeJournal();
                writeParts(changed);
            }
            moveIntoPlace(changed);
            List<String> deleted = delete(stale);
            Files.deleteIfExists(root.resolve(JOURNAL));
            List<String> written = changed.stream().map(SiteFile::path).toList();
            return new Written(written, deleted, files.size() - changed.size());
        } catch (IOException | RuntimeException e) {
            undo(e);
            throw e;
        }
    }

    /** A killed run leaves temporaries of listed files only, for its journal was written first. */
    private void removeLeftovers() throws IOException {
        for (String path : own) {
            Path part = part(root.resolve(path));
            if (isInside(part)) {
                Files.deleteIfExists(part);
            }
        }
        Files.deleteIfExists(part(root.resolve(JOURNAL)));
    }

    private List<SiteFile> changed() throws IOException {
        List<SiteFile> changed = new ArrayList<>();
        for (SiteFile file : files) {
            Path target = root.resolve(file.path());
            refuseWhatIsInTheWay(target);
            if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
                changed.add(file);
            } else if (!Files.isRegularFile(target) || !file.holds(Files.readAllBytes(target))) {
                refuseSomeoneElses(file, target);
                changed.add(file);
            }
        }
        return changed;
    }

    private void refuseWhatIsInTheWay(Path target) throws IOException {
        if (Files.isDirectory(target)) {
            throw refused(target, "a folder stands where a file of the site belongs");
        }
        for (Path up = target.getParent(); !up.equals(root); up = up.getParent()) {
            if (Files.exists(up) && !Files.isDirectory(up)) {
                throw refused(up, "a file stands where a folder of the site belongs");
            }
        }
        if (!isInside(target)) {
            throw refused(target.getParent(), "a link that leads out of the site's folder");
        }
    }

    private void refuseSomeoneElses(SiteFile file, Path target) throws IOException {
        if (!own.contains(file.path())) {
            throw refused(
                    target, "not made by Secondbolt, so it is left alone; move it away first");
        }
    }

    private static FileSystemException refused(Path path, String reason) {
        return new FileAlreadyExistsException(path.toString(), null, reason);
    }

    private SortedSet<String> stale() {
        SortedSet<String> stale = new TreeSet<>(own);
        files.forEach(file -> stale.remove(file.path()));
        stale.removeAll(Contents.paths(files.get(files.size() - 1).text()));
        return stale;
    }

    private void writeJournal() throws IOException {
        SortedSet<String> all = new TreeSet<>(own);
        files.forEach(file -> all.add(file.path()));
        Path journal = root.resolve(JOURNAL);
        writePart(journal, Contents.write("", all).getBytes(StandardCharsets.UTF_8));
        new AtomicFile(journal).awaitDisk();
        move(journal);
    }

    private void writeParts(List<SiteFile> changed) throws IOException {
        for (SiteFile file : changed) {
            Path target = root.resolve(file.path());
            makeFolder(target.getParent());
            writePart(target, file.content());
        }
        // All are written before the first is waited for, so that the disk takes them together.
        for (SiteFile file : changed) {
            new AtomicFile(root.resolve(file.path())).awaitDisk();
        }
    }

    private void writePart(Path target, byte[] content) throws IOException {
        Path part = part(target);
        parts.add(part);
        new AtomicFile(target).stage(content);
    }

    private void moveIntoPlace(List<SiteFile> changed) throws IOException {
        for (SiteFile file : changed) {
            isJournalNeeded = true;
            Path target = root.resolve(file.path());
            move(target);
            newFolders.removeIf(target::startsWith);
        }
    }

    private void move(Path target) throws IOException {
        new AtomicFile(target).commit();
        parts.remove(part(target));
    }

    private List<String> delete(SortedSet<String> stale) throws IOException {
        List<String> deleted = new ArrayList<>();
        for (String path : stale) {
            Path file = root.resolve(path);
            boolean isOurs = isInside(file) && !Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS);
            if (isOurs && Files.deleteIfExists(file)) {
                deleted.add(path);
                removeEmptyFolders(file.getParent());
            }
        }
        return deleted;
    }

    private void removeEmptyFolders(Path folder) throws IOException {
        for (Path up = folder; !up.equals(root); up = up.getParent()) {
            try {
                Files.delete(up);
            } catch (DirectoryNotEmptyException e) {
                return;
            }
        }
    }

    private void makeFolder(Path folder) throws IOException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw refused(folder, "a file stands where the folder of the site belongs");
        }
        for (Path up = folder; up != null && !Files.exists(up); up = up.getParent()) {
            newFolders.add(up);
        }
        Files.createDirectories(folder);
    }

    /** What cannot be undone is told with the failure itself; the next run clears it away. */
    private void undo(Exception failure) {
        List<Path> leftovers = new ArrayList<>(parts);
        if (!isJournalNeeded) {
            leftovers.add(root.resolve(JOURNAL));
        }
        newFolders.sort(Comparator.comparingInt(Path::getNameCount).reversed());
        leftovers.addAll(newFolders);
        for (Path leftover : leftovers) {
            try {
                Files.deleteIfExists(leftover);
            } catch (IOException e) {
                failure.addSuppressed(e);
            }
        }
    }

    private static Path part(Path target) {
        return new AtomicFile(target).part();
    }

    /** Whether a file, or the nearest folder above it that exists, lies in the site's folder. */
    private boolean isInside(Path file) throws IOException {
        Path up = file.getParent();
        while (!Files.exists(up)) {
            up = up.getParent();
        }
        return up.toRealPath().startsWith(root.toRealPath());
    }
}
